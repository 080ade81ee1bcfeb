/** @module Where on the engine this bench stands: the cell that is read next, and how to go to another. */
import { createContext, useContext } from 'react';
import type { PlaceId } from '../../engine/engine-type.ts';
import type { Cell } from '../../measure/reading.ts';
import type { JudgedPlaces } from '../journal/judged-places.ts';

export interface AskedPlace {
  readonly place: PlaceId;
  /** Grows each time that somebody asks, be it of the same place again. */
  readonly turn: number;
  /** The sheet on which it was asked: there the answer stands open. */
  readonly on: string;
}

export interface StandingOn {
  readonly cell: Cell | undefined;
  /** Grows each time that somebody goes to a cell, be it the same one again. */
  readonly turn: number;
  readonly goTo: (cell: Cell) => void;
  /** The place of which somebody asks what has to come off to reach it. */
  readonly asked: AskedPlace | undefined;
  readonly askOf: (place: PlaceId) => void;
  /** Asks no more, and stands on the map again. */
  readonly putAway: () => void;
  readonly places: JudgedPlaces;
}

export const StandingContext = createContext<StandingOn | undefined>(undefined);

export const useStanding = (): StandingOn => {
  const standing = useContext(StandingContext);
  if (!standing) throw new Error('a screen of a job stands outside a job');
  return standing;
};
