/** @module Rule: what an offer says of quantities, deposits, sleeves, life and mass makes sense for what is done. */
import type { EngineType, Offer } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { millimetres } from './every-limits.ts';

const quantities = (
  { components, placeKinds }: EngineType,
  { component, per, cents, quantity = [] }: Offer,
  path: FilePath,
): readonly Finding[] => {
  if (quantity.length === 0) return [];
  if (per === 'set')
    return [
      wrong(
        [...path, 'quantity'],
        'prices by quantity are for what is priced by the piece, and this is a price per set',
        'price it per place, or delete the quantities',
      ),
    ];
  const places = placeKinds.get(components.get(component)?.at ?? '')?.count ?? Number.POSITIVE_INFINITY;
  return quantity.flatMap(({ from, cents: each }, index): readonly Finding[] => {
    const before = quantity[index - 1];
    if (before?.from === from)
      return [
        wrong([...path, 'quantity'], `two prices are given from ${from} on`, 'keep the one that is valid'),
      ];
    if (each > (before?.cents ?? cents))
      return [
        doubtful(
          [...path, 'quantity'],
          `each costs more from ${from} on than with fewer`,
          "compare with the supplier's list",
        ),
      ];
    return from > places
      ? [
          doubtful(
            [...path, 'quantity'],
            `the price from ${from} on is never had: there are ${places} places`,
            'delete it, or look whether the offer is for another part',
          ),
        ]
      : [];
  });
};

const sleeves = (
  { components, characteristics }: EngineType,
  { component, does, boredTo }: Offer,
  path: FilePath,
): readonly Finding[] => {
  if (boredTo === undefined) return [];
  if (does !== 'sleeve')
    return [
      wrong(
        [...path, 'bored-to'],
        'only a sleeve has a bore that takes it',
        'delete it, or let the offer sleeve',
      ),
    ];
  const made = characteristics.get(components.get(component)?.sizes?.of ?? '')?.limits?.new.greatest;
  return made === undefined || boredTo > made
    ? []
    : [
        wrong(
          [...path, 'bored-to'],
          `a bore of ${millimetres(boredTo)} takes no sleeve: the size as made is ${millimetres(made)}`,
          'give the bore into which the sleeve is pressed',
        ),
      ];
};

const ofOffer = (engine: EngineType, offer: Offer, path: FilePath): readonly Finding[] => {
  const { component, does, deposit, life, mass } = offer;
  const stays = engine.components.get(component)?.stays === true;
  return [
    ...quantities(engine, offer, path),
    ...sleeves(engine, offer, path),
    ...(deposit !== undefined && does !== 'exchange'
      ? [
          wrong(
            [...path, 'deposit'],
            'a deposit is paid on the old part of an exchange only',
            'delete it, or let the offer exchange',
          ),
        ]
      : []),
    ...(life !== undefined && life <= 0
      ? [wrong([...path, 'life'], 'the life of what is offered is not above zero', 'give the hours expected')]
      : []),
    ...(mass?.least !== undefined && mass.greatest !== undefined && mass.least > mass.greatest
      ? [
          wrong(
            [...path, 'mass'],
            'the masses cross: the least is above the greatest',
            'probably they are swapped',
          ),
        ]
      : []),
    ...(stays && does === 'exchange'
      ? [
          doubtful(
            [...path, 'does'],
            `${engine.components.get(component)?.title} stay in their own places, and this exchange is never open`,
            'delete the offer, or the `stays` of the component',
          ),
        ]
      : []),
  ];
};

export const offerTerms = (engine: EngineType): readonly Finding[] =>
  engine.offers.flatMap((offer, index) => ofOffer(engine, offer, ['offers', index]));
