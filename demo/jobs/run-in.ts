/** @module The run-in of an engine of the demonstration, as its log has it: steps begun, gauges read, a fault put right. */
import type { GaugeName } from '../../src/engine/gauge.ts';
import { runInStanding } from '../../src/job/run/run-in-standing.ts';
import type { GaugeReading } from '../../src/job/run-fact.ts';
import type { Typed } from '../../src/quantity/typed.ts';
import type { Story } from '../story.ts';

const typed = (text: string, unit: string): Typed => ({ text, unit });

/** Minute, oil pressure in bar, then oil, water and exhaust in °C, and the fuel in litres. */
type LogLine = readonly [
  minute: number,
  oil: string,
  oilAt: string,
  water: string,
  exhaust: string,
  fuel: string,
];

const shown = (story: Story, step: number, line: LogLine): readonly GaugeReading[] => {
  const asked = story.job().sheet.engine.runIn?.steps[step - 1];
  if (asked === undefined) throw new Error(`the engine type has no step ${step}`);
  const [, oil, oilAt, water, exhaust, fuel] = line;
  const one = (gauge: GaugeName, text: string, unit: string) => ({ gauge, typed: typed(text, unit) });
  return [
    { gauge: 'speed', typed: asked.speed },
    { gauge: 'load', typed: asked.load },
    one('oil-pressure', oil, 'bar'),
    one('oil-temperature', oilAt, '°C'),
    one('water-temperature', water, '°C'),
    { ...one('exhaust-temperature', exhaust, '°C'), cylinder: 1 },
    one('fuel-used', fuel, 'L'),
    one('ambient-temperature', '16', '°C'),
  ];
};

const steps: readonly (readonly LogLine[])[] = [
  [[10, '3.4', '31', '38', '118', '0.1']],
  [
    [10, '3.3', '46', '57', '182', '0.2'],
    [20, '3.2', '55', '66', '188', '0.2'],
  ],
  [
    [10, '3.3', '62', '71', '268', '0.4'],
    [20, '3.2', '68', '75', '276', '0.4'],
    [30, '3.2', '71', '77', '279', '0.4'],
  ],
  [
    [15, '3.1', '77', '81', '402', '0.9'],
    [25, '3.0', '81', '83', '411', '0.6'],
    [35, '3.0', '82', '83', '413', '0.6'],
    [45, '3.0', '82', '84', '414', '0.6'],
  ],
];

const notes = ['idle, no leaks', 'light load', 'exhaust clear, even beat', 'full load, breather dry'];

const readStep = (
  story: Story,
  by: string,
  step: number,
  lines: readonly LogLine[],
  leaks = 'none',
): void => {
  let before = 0;
  for (const [at, line] of lines.entries()) {
    story.tell(by, line[0] - before, {
      kind: 'take run reading',
      step,
      minute: line[0],
      gauges: shown(story, step, line),
      smoke: 'clear',
      leaks,
      note: at === lines.length - 1 && leaks === 'none' ? (notes[step - 1] ?? '') : '',
    });
    before = line[0];
  }
};

/** The single-cylinder engine: in the third step a union weeps, so that the step is run again. */
export const runIn = (story: Story, by: string): void => {
  for (const [at, lines] of steps.entries()) {
    const step = at + 1;
    const begin = () =>
      story.tell(by, 3, {
        kind: 'begin run step',
        step,
        note: '',
        ...(runInStanding(story.job()).starts && { oilPressureAfter: typed('5', 's') }),
      });
    begin();
    if (step === 3) {
      readStep(story, by, step, lines.slice(0, 1), 'union of the injection pipe');
      story.tell(by, 1, {
        kind: 'note fault',
        says: 'the union of the injection pipe weeps',
        place: 'pump.1',
        stopsRun: true,
      });
      story.tell(by, 15, {
        kind: 'put fault right',
        fault: story.job().head.event?.id ?? '',
        done: 'seat dressed, union tightened again, dry',
      });
      begin();
    }
    readStep(story, by, step, lines);
  }
};
