/** @module The shapes of what happens while an engine runs in. */
import { z } from 'zod';
import { type GaugeName, gauges } from '../engine/gauge.ts';
import { note, typed, words } from '../journal/shape.ts';

const step = z.int().min(1).max(40);

export const runShapes = {
  'run step begun': z.strictObject({ step, oilPressureAfter: typed.exactOptional(), note }),
  'run reading taken': z.strictObject({
    step,
    minute: z.number().min(0).max(100_000),
    gauges: z
      .array(
        z.strictObject({
          gauge: z.enum(gauges.map(({ name }) => name) as [GaugeName, ...GaugeName[]]),
          cylinder: z.int().min(1).max(64).exactOptional(),
          typed,
        }),
      )
      .min(1)
      .max(100),
    smoke: z.enum(['clear', 'black', 'blue', 'white']).exactOptional(),
    leaks: note.exactOptional(),
    note,
  }),
  'run reading struck out': z.strictObject({ reading: words, why: note }),
  'fault noted': z.strictObject({ says: note, place: words.exactOptional(), stopsRun: z.boolean() }),
  'fault put right': z.strictObject({ fault: words, done: note }),
};
