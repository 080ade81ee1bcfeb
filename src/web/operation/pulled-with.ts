/** @module What a stage is pulled with, as the form has it: threads, wrench, adapter, new bolts or used; and as it is asked. */
import type { Fastener } from '../../engine/fastener.ts';
import type { RequestOf } from '../../job/command.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { typedFigure, typedIfAny } from '../instruments/typed-figure.ts';

export interface PulledWith {
  readonly threadState: Fastener['threadState'];
  /** '' where none is named. */
  readonly wrench: string;
  /** As typed: lengths in mm, the angle in degrees. */
  readonly wrenchLength: string;
  readonly adapter: string;
  readonly adapterAngle: string;
  readonly boltsAre: '' | 'new' | 'used';
  readonly longest: string;
}

export const pulledAsAsked = ({ threadState }: Fastener): PulledWith => ({
  threadState,
  wrench: '',
  wrenchLength: '',
  adapter: '',
  adapterAngle: '',
  boltsAre: '',
  longest: '',
});

type Told = Pick<RequestOf<'tighten stage'>, 'threadState' | 'wrench' | 'adapter' | 'boltsAre' | 'longest'>;

/** The part of the request that the form holds; an angle is turned without wrench and adapter. */
export const toldOf = (form: PulledWith, kind: 'torque' | 'angle', asksBolts: boolean): Answer<Told> => {
  const longest = typedIfAny(asksBolts ? form.longest : '', 'mm', 'length', 'longest bolt');
  if (longest.kind === 'refused') return longest;
  const bolts = {
    threadState: form.threadState,
    ...(asksBolts && form.boltsAre !== '' && { boltsAre: form.boltsAre }),
    ...(longest.value !== undefined && { longest: longest.value }),
  };
  if (kind === 'angle') return answer(bolts);
  const told = { ...bolts, ...(form.wrench !== '' && { wrench: form.wrench }) };
  if (form.adapter.trim() === '') return answer(told);
  const wrench = typedFigure(form.wrenchLength, 'mm', 'length', 'wrench, square to hand');
  if (wrench.kind === 'refused') return wrench;
  const adapter = typedFigure(form.adapter, 'mm', 'length', 'adapter, square to bolt');
  if (adapter.kind === 'refused') return adapter;
  const angle = typedIfAny(form.adapterAngle, 'deg', 'angle', 'adapter, off the line');
  if (angle.kind === 'refused') return angle;
  return answer({
    ...told,
    adapter: {
      wrench: wrench.value,
      adapter: adapter.value,
      ...(angle.value !== undefined && { angle: angle.value }),
    },
  });
};
