/** @module Rule: pump timing measures at the pumps, and datum, depth and range of packs agree. */
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import type { PumpTiming } from '../pump-timing.ts';
import { millimetres } from './every-limits.ts';

const atThePumps = (engine: EngineType, timing: PumpTiming): readonly Finding[] =>
  (['depth', 'found'] as const).flatMap((key) => {
    const of = engine.characteristics.get(timing[key] ?? '');
    if (of === undefined) return [];
    const path = ['pump-timing', key];
    if (of.at !== timing.at) {
      const what = `${of.title} is taken at ${of.at}, and the pumps sit at ${timing.at}`;
      return [wrong(path, what, 'name a characteristic of the pumps')];
    }
    if (of.derived !== undefined || of.planes.length * of.axes.length > 1) {
      const what = `${of.title} is not one reading a pump`;
      return [wrong(path, what, 'name a characteristic that is measured once at each pump')];
    }
    return [];
  });

const figures = ({ tolerance, rate, datum }: PumpTiming): readonly Finding[] =>
  Object.entries({ tolerance, rate, datum })
    .filter(([, value]) => value <= 0)
    .map(([key]) =>
      wrong(['pump-timing', key], `the ${key} is not above zero`, 'compare it with the manual'),
    );

/** Depths that the manual allows and packs that it allows should be two ways of saying the same. */
const agrees = (engine: EngineType, { datum, depth, range, packIs }: PumpTiming): readonly Finding[] => {
  const { least, greatest } = engine.characteristics.get(depth)?.limits?.new ?? {};
  if (least === undefined || greatest === undefined) return [];
  const deepens = packIs === 'depth less datum';
  const thinnest = deepens ? least - datum : datum - greatest;
  const thickest = deepens ? greatest - datum : datum - least;
  const slack = 1e-6;
  if (thinnest >= (range.least ?? -Infinity) - slack && thickest <= (range.greatest ?? Infinity) + slack)
    return [];
  return [
    doubtful(
      ['pump-timing', 'datum'],
      `depths within their limits would need packs from ${millimetres(thinnest)} to ${millimetres(thickest)}, beyond the range of packs`,
      'compare datum, range and the limits of the depth with the manual',
    ),
  ];
};

export const pumpTimingFits = (engine: EngineType): readonly Finding[] =>
  engine.pumpTiming === undefined
    ? []
    : [
        ...atThePumps(engine, engine.pumpTiming),
        ...figures(engine.pumpTiming),
        ...agrees(engine, engine.pumpTiming),
      ];
