/** @module What can be asked of a job's loose parts in the terminal: measured, set aside, assigned to places. */
import { figure, optional, placed, repeats, text } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, listed, type Values, word } from './values.ts';

const asTyped = (values: Values): Values => values;

export const partRequests: readonly JobRequest[] = [
  {
    name: 'measure-part',
    kind: 'measure part',
    keys: [
      text('component', 'main-shells'),
      text('part', 'L7'),
      optional(text('size', '0.25')),
      optional(text('half', 'upper')),
      repeats('readings'),
      text('instrument', 'ball-0-25'),
      optional(figure('temperature', 'temperature', '21°C')),
      optional(figure('instrument-temperature', 'temperature', '20°C')),
    ],
    body: (values) => ({
      component: values.component,
      part: values.part,
      size: word(values.size) || 'standard',
      ...given(values, { half: 'half' }),
      readings: listed(values.readings).map((typed) => ({
        typed,
        instrument: values.instrument,
        ...given(values, { temperature: 'temperature', 'instrument-temperature': 'instrumentTemperature' }),
      })),
    }),
  },
  {
    name: 'set-part-aside',
    kind: 'set part aside',
    keys: [text('component', 'main-shells'), text('part', 'L7'), text('why', '"nicked at the joint"')],
    body: asTyped,
  },
  {
    name: 'assign-parts',
    kind: 'assign parts',
    keys: [text('component', 'main-shells'), placed('places')],
    body: asTyped,
  },
];
