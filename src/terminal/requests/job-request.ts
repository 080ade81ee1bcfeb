/** @module What can be asked of a job in the terminal: one record a request, with its keys and how they become it. */
import type { OpenJob } from '../../job/job.ts';
import { cellKey } from '../../measure/reading.ts';
import { homeRequests } from './home-requests.ts';
import { instrumentBody, instrumentKeys } from './instrument-keys.ts';
import { box, figure, figureOfAny, type Key, names, number, optional, pack, text, yesOrNo } from './keys.ts';
import { operationRequests } from './operation-requests.ts';
import { orderRequests } from './order-requests.ts';
import { partRequests } from './part-requests.ts';
import { runRequests } from './run-requests.ts';
import { sumRequest } from './sum-request.ts';
import type { JobRequest } from './typed-request.ts';
import { given, together, type Values, word } from './values.ts';

const cellOf = (values: Values) => ({
  place: word(values.place),
  characteristic: word(values.characteristic),
  plane: word(values.plane),
  axis: word(values.axis),
});

const cellKeys: readonly Key[] = [
  text('place', 'main.2'),
  text('characteristic', 'main-journal-diameter'),
  optional(text('plane', 'front')),
  optional(text('axis', 'vertical')),
];

/** What a characteristic may be a figure of; what is wrong with none of their units is said of a length. */
const quantities = ['force', 'angle', 'torque', 'pressure', 'mass', 'length'] as const;

const asTyped = (values: Values): Values => values;

/** Which plan of which offer; where a plan alone is typed the last offer, where it has one plan that one. */
const offerMeant = ({ offer, plan }: Values, { offers }: OpenJob): Values => {
  if (offer === undefined && plan === undefined) return {};
  const number = Number(offer ?? Math.max(1, offers.length));
  const plans = offers[number - 1]?.plans ?? [];
  const only = plans.length === 1 ? plans[0]?.name : '';
  return { offer: { number, plan: plan ?? only ?? '', by: 'note' } };
};

export const jobRequests: readonly JobRequest[] = [
  {
    name: 'set-scope',
    kind: 'set scope',
    keys: [
      names('reach', 'pump.1, head'),
      optional(names('also', 'lift-flywheel')),
      text('says', '"the owner wants the top end only"'),
    ],
    body: asTyped,
  },
  {
    name: 'bring-instrument',
    kind: 'bring instrument',
    keys: [
      ...instrumentKeys,
      optional(text('certificate', 'C-1187')),
      optional(text('certified-on', '2026-03-02')),
      optional(text('due', '2027-03-01')),
    ],
    body: (values) => ({
      instrument: {
        ...instrumentBody(values),
        ...together(
          'calibration',
          given(values, { certificate: 'certificate', 'certified-on': 'on', due: 'due' }),
        ),
      },
    }),
  },
  {
    name: 'take-reading',
    kind: 'take reading',
    keys: [
      ...cellKeys,
      figureOfAny('reading', quantities, '54.961mm'),
      text('instrument', 'mic-50-75'),
      optional(figure('temperature', 'temperature', '21°C')),
      optional(figure('instrument-temperature', 'temperature', '20°C')),
    ],
    body: (values) => ({
      cell: cellOf(values),
      ...given(values, { reading: 'typed', instrument: 'instrument', temperature: 'temperature' }),
      ...given(values, { 'instrument-temperature': 'instrumentTemperature' }),
    }),
  },
  {
    name: 'strike-out-reading',
    kind: 'strike out reading',
    keys: [
      optional(text('reading', 'ID')),
      ...cellKeys.map(optional),
      text('why', '"thimble read one turn out"'),
    ],
    // By its id, or the reading that counts in a cell.
    body: (values, job) => ({
      reading: word(values.reading) || (job.sheet.readings.get(cellKey(cellOf(values)))?.at(-1)?.id ?? ''),
      why: values.why,
    }),
  },
  {
    name: 'answer-doubt',
    kind: 'answer doubt',
    keys: [text('doubt', 'ID'), text('why', '"measured twice, by two people"')],
    body: asTyped,
  },
  {
    name: 'note-size-found',
    kind: 'note size found',
    keys: [text('component', 'bores'), optional(text('place', 'bore.2')), text('size', '0.50')],
    body: asTyped,
  },
  {
    name: 'note-finding',
    kind: 'note finding',
    keys: [
      text('place', 'bore.2'),
      text('component', 'bores'),
      text('finding', 'scored'),
      yesOrNo('may-go-back'),
      optional(text('says', '"one score, thrust side"')),
      optional(text('grade', 'marked')),
      optional(text('crack-test', '"dye penetrant"')),
      optional(text('crack-test-showed', '"no crack"')),
      optional(text('hardness', '"52 HRC"')),
    ],
    body: (values) => ({
      ...given(values, { grade: 'grade', hardness: 'hardness' }),
      ...together('crackTest', given(values, { 'crack-test': 'by', 'crack-test-showed': 'showed' })),
      ...given(values, {
        place: 'place',
        component: 'component',
        finding: 'finding',
        'may-go-back': 'mayGoBack',
      }),
      says: word(values.says),
    }),
  },
  {
    name: 'strike-out-picture',
    kind: 'strike out picture',
    keys: [text('picture', 'ID'), text('why', '"shows another journal"')],
    body: asTyped,
  },
  { name: 'count-shims', kind: 'count shims', keys: [box('shims')], body: asTyped },
  {
    name: 'note-agreement',
    kind: 'note agreement',
    keys: [
      text('name', '"H. Wetherlam"'),
      text('how', '"by telephone"'),
      optional(number('offer', '1')),
      optional(text('plan', 'A')),
    ],
    body: (values, job) => ({ name: values.name, how: values.how, ...offerMeant(values, job) }),
  },
  ...orderRequests,
  ...partRequests,
  { name: 'fit-pack', kind: 'fit pack', keys: [text('place', 'pump.1'), pack('shims')], body: asTyped },
  ...operationRequests,
  sumRequest,
  ...homeRequests,
  {
    name: 'log-run-step',
    kind: 'log run step',
    keys: [
      figure('speed', 'speed', '1500rpm'),
      figureOfAny('load', ['torque', 'ratio'], '50%'),
      number('minutes', '20'),
      optional(figure('oil-pressure', 'pressure', '3.2bar')),
      optional(figure('water-temperature', 'temperature', '78°C')),
      optional(text('note', '"no smoke"')),
    ],
    body: (values) => ({
      ...given(values, { speed: 'speed', load: 'load', minutes: 'minutes' }),
      ...given(values, { 'oil-pressure': 'oilPressure', 'water-temperature': 'waterTemperature' }),
      note: word(values.note),
    }),
  },
  ...runRequests,
  {
    name: 'hand-over',
    kind: 'hand over',
    keys: [text('to', '"H. Wetherlam"'), optional(text('note', '"oil and filter after 50 hours"'))],
    body: (values) => ({ to: values.to, note: word(values.note) }),
  },
];
