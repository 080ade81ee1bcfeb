/** @module Alarms of a reading: what is wrong and what to do at once, in words. */
import { gaugeNamed } from '../../engine/gauge.ts';
import { typedText } from '../../quantity/typed.ts';
import type { JudgedGauge, JudgedGauges } from './judged-reading.ts';

export interface Alarm {
  readonly says: string;
  /** What to do, at once. */
  readonly remedy: string;
  /** Whether the engine is to be stopped before anything else. */
  readonly stop: boolean;
}

const coolDown = 'take the load off and let it idle; stop it where that does not bring it down';

/** What to do where a gauge is beyond its limit. Common practice, no source: the maker's manual comes first. */
const doing: Readonly<Record<string, readonly [remedy: string, stop: boolean]>> = {
  'oil-pressure too low': ['stop the engine at once, and do not start it before the cause is found', true],
  'oil-pressure too high': [
    'take the load off and bring the speed down, then stop; look at the relief valve and at the oil',
    false,
  ],
  'oil-temperature too high': [coolDown, false],
  'water-temperature too high': [
    `${coolDown}; let it cool before any cap is opened, and pour no cold water in`,
    false,
  ],
  'water-in-temperature too high': [coolDown, false],
  'exhaust-temperature too high': [
    'take the load off at once; compare the cylinders: pump delivery, injector, timing, air',
    false,
  ],
  'crankcase-pressure too high': [
    'stop the engine at once, and keep away from the crankcase doors until it has cooled: what is hot inside may take fire when air comes in',
    true,
  ],
  'blow-by too high': ['stop the engine: a ring, a piston or a liner may be going', true],
};

const titleOf = ({ gauge, cylinder }: Pick<JudgedGauge, 'gauge' | 'cylinder'>): string => {
  const title = gaugeNamed(gauge)?.title ?? gauge;
  return cylinder === undefined ? title : `${title} of cylinder ${cylinder}`;
};

/** What a gauge is called, with its cylinder where each has one. */
export const gaugeTitle = titleOf;

/** Alarms of one reading, those that stop the engine first. */
export const alarmsIn = ({ gauges, spreads }: JudgedGauges): readonly Alarm[] =>
  [
    ...gauges.flatMap((one) => {
      if (one.verdict !== 'too low' && one.verdict !== 'too high') return [];
      const [remedy, stop] = doing[`${one.gauge} ${one.verdict}`] ?? [
        'take the load off and look for the cause',
        false,
      ];
      const says = `${titleOf(one)} is ${one.verdict}: ${typedText(one.typed)}, and it is to be ${one.limit}`;
      return [{ says, remedy, stop }];
    }),
    ...spreads
      .filter(({ verdict }) => verdict === 'too high')
      .map(({ gauge, spread, limit }) => ({
        says: `${gaugeNamed(gauge)?.title ?? gauge}: the cylinders are ${spread} apart, and they are to be ${limit}`,
        remedy:
          'take the load off and look at the cylinder that is off: pump delivery, injector, timing, compression',
        stop: false,
      })),
  ].sort((a, b) => Number(b.stop) - Number(a.stop));
