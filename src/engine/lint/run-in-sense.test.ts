/** @module The rule that a run-in can be run, broken by the least change; and what of it is read in which unit. */
import { describe, expect, it } from 'vitest';
import { describeRule } from '../../../test/engines/breach.ts';
import { changed, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';

const titled = (title: string) => `    - title: ${title}\n      operation: `;

describeRule('has a run-in that can be run', [
  {
    breaks: 'a step of an operation that is not there',
    changes: [[`${titled('Half load')}run-in`, `${titled('Half load')}running`]],
    says: /there is no operation running/,
    on: 'operation: running',
  },
  {
    breaks: 'a step of an operation that is not of the run',
    changes: [[`${titled('Idle, look for leaks')}run-in`, `${titled('Idle, look for leaks')}prove-stop`]],
    says: /run in prove-stop, which is not of the run/,
    on: `operation: prove-stop`,
  },
  {
    breaks: 'a step that belongs to an operation before that of the last step',
    changes: [[`${titled('Idle, let it cool')}full-load`, `${titled('Idle, let it cool')}first-start`]],
    says: /belongs to first-start, which is before full-load/,
    on: 'operation: first-start',
  },
  {
    breaks: 'a load that is no share of full load',
    changes: [['load: 75 %', 'load: 7500 %']],
    says: /asks for 7500 % of full load.*`50 %`/,
    on: 'load: 7500 %',
  },
  {
    breaks: 'loads in two kinds of figure',
    changes: [['load: 75 %', 'load: 90 N·m']],
    says: /as shares of full load and as torques/,
    on: 'load: 90 N·m',
  },
  {
    breaks: 'a load that falls before the heaviest step',
    changes: [['load: 75 %', 'load: 40 %']],
    says: /the load of Three quarters of the load falls below that of Half load/,
    on: 'load: 40 %',
    weight: 'warning',
  },
  {
    breaks: 'limits that cross',
    changes: [['oil-pressure: { least: 1.2 bar }', 'oil-pressure: { least: 5.5 bar, greatest: 1.2 bar }']],
    says: /limits of oil pressure cross: least 5.5 bar, greatest 1.2 bar/,
    on: 'least: 5.5 bar, greatest: 1.2 bar',
  },
  {
    breaks: 'degrees Fahrenheit written as Celsius',
    changes: [
      [
        'water-temperature: { greatest: 92 °C }\n    exhaust',
        'water-temperature: { greatest: 198 °C }\n    exhaust',
      ],
    ],
    says: /198 °C is much for water out.*°F/,
    on: 'greatest: 198 °C',
    weight: 'warning',
  },
  {
    breaks: 'a spread of what is read once',
    changes: [
      ['oil-temperature: { greatest: 105 °C }', 'oil-temperature: { greatest: 105 °C, spread: 5 °C }'],
    ],
    says: /oil temperature is read once/,
    on: 'spread: 5 °C',
  },
  {
    breaks: 'three readings that no step is long enough for',
    changes: [
      [
        'apart: 10\n        within: { water-temperature: 2 °C, oil-temperature: 3 °C }',
        'apart: 40\n        within: { water-temperature: 2 °C, oil-temperature: 3 °C }',
      ],
    ],
    says: /three readings 40 minutes apart take longer than the 60 minutes/,
    on: 'apart: 40',
    weight: 'warning',
  },
  {
    breaks: 'a setting that holds nobody to anything',
    changes: [['set-within: 5 %', 'set-within: 50 %']],
    says: /within 50 % of what is asked is no setting/,
    on: 'set-within: 50 %',
  },
  {
    breaks: 'minutes without oil pressure',
    changes: [['no-oil-pressure-within: 15 s', 'no-oil-pressure-within: 15 min']],
    says: /15 min without oil pressure is not what a bearing stands/,
    on: '15 min',
    weight: 'warning',
  },
  {
    breaks: 'a figure of another kind',
    changes: [['crankcase-pressure: { greatest: 4 mbar }', 'crankcase-pressure: { greatest: 4 mm }']],
    says: /mm is a unit of length, not of pressure/,
    on: 'greatest: 4 mm',
  },
]);

describe('a run-in', () => {
  const runIn = (...changes: readonly (readonly [string, string])[]) => {
    const found = readEngineType(changed(quillfeatherText, ...changes)).engine?.runIn;
    if (found === undefined) throw new Error('the engine has no run-in');
    return found;
  };

  it('takes a limit that holds everywhere into each step that gives no other', () => {
    const [idle, quarter, half] = runIn().steps;
    expect(idle?.limits.get('oil-temperature')).toMatchObject({ greatest: 105 });
    expect(idle?.limits.get('oil-pressure')).toEqual({
      least: 120_000,
      printed: { least: { text: '1.2', unit: 'bar' } },
    });
    expect(quarter?.limits.get('water-temperature')).toMatchObject({ greatest: 92 });
    expect(half?.limits.get('water-temperature')).toMatchObject({ least: 65, greatest: 92 });
    expect(half?.limits.get('oil-pressure')).toMatchObject({ withOilAt: 60 });
  });

  it('reads a difference of temperatures as a difference: 9 °F are 5 °C', () => {
    const { steps } = runIn([
      '{ water-temperature: 2 °C, oil-temperature: 3 °C }',
      '{ water-temperature: 9 °F, oil-temperature: 3 K }',
    ]);
    const within = steps[3]?.steady?.within;
    expect(within?.get('water-temperature')?.amount).toBeCloseTo(5, 12);
    expect(within?.get('oil-temperature')?.amount).toBeCloseTo(3, 12);
  });

  it('is left out where the file has none', () => {
    const text = quillfeatherText.slice(0, quillfeatherText.indexOf('\nrun-in:\n'));
    expect(readEngineType(text).engine).not.toHaveProperty('runIn');
  });
});
