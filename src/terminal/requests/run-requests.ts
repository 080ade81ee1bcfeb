/** @module What can be asked of a job's running in the terminal: steps begun, gauges read, faults noted and put right. */
import { type Gauge, gauges } from '../../engine/gauge.ts';
import type { OpenJob } from '../../job/job.ts';
import { runInStanding } from '../../job/run/run-in-standing.ts';
import { figure, figureOfAny, figuresOf, type Key, number, optional, text, yesOrNo } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, listed, type Values, word } from './values.ts';

const examples: Readonly<Record<Gauge['name'], string>> = {
  speed: '1500rpm',
  load: '50%',
  'oil-pressure': '3.2bar',
  'oil-temperature': '74°C',
  'water-temperature': '78°C',
  'water-in-temperature': '66°C',
  'exhaust-temperature': '"320°C; 331°C"',
  'crankcase-pressure': '1.4mbar',
  'blow-by': '38L/min',
  'fuel-used': '0.8L',
  'ambient-temperature': '17°C',
};

const gaugeKey = ({ name, of, each }: Gauge): Key =>
  each === true ? figuresOf(name, of[0], examples[name]) : figureOfAny(name, of, examples[name]);

const gaugesOf = (values: Values) =>
  gauges.flatMap(({ name, each }): readonly object[] => {
    const value = values[name];
    if (value === undefined) return [];
    return each === true
      ? listed(value).map((typed, at) => ({ gauge: name, cylinder: at + 1, typed }))
      : [{ gauge: name, typed: value }];
  });

/** The step that is meant where none is typed: the one in hand, else the next. */
const stepMeant = ({ step }: Values, job: OpenJob): unknown => {
  const { inHand, next } = runInStanding(job);
  return step ?? inHand?.number ?? next?.number ?? 1;
};

/** By its id, or by its number in the list; the first that is not put right where none is typed. */
const faultMeant = ({ fault }: Values, job: OpenJob): string => {
  const { faults, openFaults } = runInStanding(job);
  if (fault === undefined) return openFaults[0]?.id ?? '';
  return faults[Number(fault) - 1]?.id ?? word(fault);
};

/** By its id, or the last one that counts. */
const readingMeant = ({ reading }: Values, job: OpenJob): string =>
  word(reading) ||
  (runInStanding(job).inHand?.readings.findLast(({ struckOut }) => struckOut === undefined)?.id ?? '');

export const runRequests: readonly JobRequest[] = [
  {
    name: 'begin-run-step',
    kind: 'begin run step',
    keys: [
      optional(number('step', '2')),
      optional(figure('oil-pressure-after', 'time', '6s')),
      optional(text('note', '"started warm"')),
    ],
    body: (values, job) => ({
      step: runInStanding(job).next?.number ?? 1,
      ...given(values, { step: 'step', 'oil-pressure-after': 'oilPressureAfter' }),
      note: word(values.note),
    }),
  },
  {
    name: 'log-run-reading',
    kind: 'take run reading',
    keys: [
      optional(number('step', '2')),
      number('minute', '15'),
      ...gauges.map((gauge) => optional(gaugeKey(gauge))),
      optional(text('smoke', 'clear')),
      optional(text('leaks', 'none')),
      optional(text('note', '"even beat"')),
    ],
    body: (values, job) => ({
      step: stepMeant(values, job),
      ...given(values, { minute: 'minute', smoke: 'smoke', leaks: 'leaks' }),
      gauges: gaugesOf(values),
      note: word(values.note),
    }),
  },
  {
    name: 'strike-out-run-reading',
    kind: 'strike out run reading',
    keys: [optional(text('reading', 'ID')), text('why', '"gauge misread: 3.2 bar"')],
    body: (values, job) => ({ reading: readingMeant(values, job), why: values.why }),
  },
  {
    name: 'note-fault',
    kind: 'note fault',
    keys: [text('says', '"union at pump 1 weeps"'), optional(text('place', 'pump.1')), yesOrNo('stops-run')],
    body: (values) => given(values, { says: 'says', place: 'place', 'stops-run': 'stopsRun' }),
  },
  {
    name: 'put-fault-right',
    kind: 'put fault right',
    keys: [optional(text('fault', '1')), text('done', '"washer renewed, dry at full load"')],
    body: (values, job) => ({ fault: faultMeant(values, job), done: values.done }),
  },
];
