/** @module Rule: the second check of fitted pumps can be read, turned into crank angle, and is asked for after they are fitted. */

import type { Characteristic, EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import type { PumpTiming, TimingCheck } from '../pump-timing.ts';
import { figureText, quantityOf, shownIn } from '../shown-in.ts';

const at = ['pump-timing', 'check'];

const readable = (timing: PumpTiming, check: TimingCheck, of: Characteristic): readonly Finding[] => {
  const quantity = quantityOf(of);
  if (of.at !== timing.at)
    return [
      wrong(
        [...at, 'characteristic'],
        `${of.title} is taken at ${of.at}, and the pumps sit at ${timing.at}`,
        'name a characteristic of the pumps',
      ),
    ];
  if (of.derived !== undefined || of.planes.length * of.axes.length > 1)
    return [
      wrong(
        [...at, 'characteristic'],
        `${of.title} is not one reading a pump`,
        'name a characteristic that is read at each pump; repeats of it are taken as they come',
      ),
    ];
  if (quantity !== 'angle' && quantity !== 'length')
    return [
      wrong(
        [...at, 'characteristic'],
        `${of.title} is neither an angle nor a length`,
        'read the crank in degrees, or the way of its mark along the rim',
      ),
    ];
  if (quantity === 'length' && !((check.rim ?? 0) > 0))
    return [
      wrong(
        [...at, 'rim'],
        'a length on the rim is read, and it is not said how far the rim runs for each degree',
        'give `rim`: π times the diameter of the rim, over 360, such as 3.14 mm/deg',
      ),
    ];
  return [];
};

const withinLimits = (check: TimingCheck, of: Characteristic): readonly Finding[] => {
  const { least, greatest } = of.limits?.new ?? {};
  if (least === undefined || greatest === undefined)
    return [
      wrong(
        ['characteristics', of.name],
        `${of.title} proves the timing of the pumps, and has no least and greatest limit as made`,
        'give both: the nominal figure less and plus what the manual lets a pump be out',
      ),
    ];
  if (check.nominal >= least && check.nominal <= greatest) return [];
  const text = (value: number) => figureText(value, shownIn(of));
  return [
    wrong(
      [...at, 'nominal'],
      `${text(check.nominal)} lies outside ${text(least)} to ${text(greatest)}, the limits of ${of.title}`,
      'compare both with the manual',
    ),
  ];
};

const askedFor = ({ operations }: EngineType, of: Characteristic): readonly Finding[] =>
  operations.size === 0 || [...operations.values()].some(({ needs }) => needs.includes(of.name))
    ? []
    : [
        doubtful(
          [...at, 'characteristic'],
          `no operation asks for ${of.title} to be proved`,
          `name it under \`needs\` of the operation that comes after the pumps are fitted`,
        ),
      ];

export const secondSpill = (engine: EngineType): readonly Finding[] => {
  const { pumpTiming: timing, characteristics } = engine;
  const of = characteristics.get(timing?.check?.of ?? '');
  if (timing?.check === undefined || of === undefined) return [];
  const bad = readable(timing, timing.check, of);
  return bad.length > 0 ? bad : [...withinLimits(timing.check, of), ...askedFor(engine, of)];
};
