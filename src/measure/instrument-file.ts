/** @module An instrument as a file gives it, figures with their units, to an instrument of the register. */
import { z } from 'zod';
import { kindOf } from '../engine/instrument-kind.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { readTyped, type Typed } from '../quantity/typed.ts';
import type { Instrument } from './instrument.ts';

const text = z.string().min(1).max(60);

const instrumentFile = z.strictObject({
  name: text,
  kind: text,
  least: text,
  greatest: text,
  resolution: text,
  'permissible-error': text,
  repeatability: text,
  zero: text.optional(),
  turn: text.optional(),
  'set-in': text.optional(),
  'set-size': text.optional(),
  'set-shown': text.optional(),
  correction: text.optional(),
  'correction-uncertainty': text.optional(),
  material: z.enum(['steel', 'cast iron', 'aluminium', 'bronze']).optional(),
});

type Figure = Exclude<keyof z.infer<typeof instrumentFile>, 'name' | 'kind' | 'set-in' | 'material'>;

const figureNames = [
  'least',
  'greatest',
  'resolution',
  'permissible-error',
  'repeatability',
  'zero',
  'turn',
  'set-size',
  'set-shown',
  'correction',
  'correction-uncertainty',
] as const;
const needed = figureNames.slice(0, 5);

const present = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };

/**
 * Reads an instrument: `{ "name": "mic-50-75", "kind": "outside micrometer", "least": "50 mm", "greatest":
 * "75 mm", "resolution": "0.001 mm", "permissible-error": "0.004 mm", "repeatability": "0.0015 mm",
 * "zero": "0.000 mm", "turn": "0.5 mm" }`; zero and turn may be missing.
 *
 * One that compares says what it was set in, at what size, and what it showed there: `"set-in": "mic-75-100",
 * "set-size": "85.000 mm", "set-shown": "0.000 mm"`. One with a certificate may give its `correction` and the
 * `correction-uncertainty` (expanded, k = 2); one that is not of steel its `material`.
 */
export const readInstrument = (value: unknown): Answer<Instrument> => {
  const read = instrumentFile.safeParse(value);
  if (!read.success) {
    const issue = read.error.issues[0];
    return refuse(
      `the instrument is not complete: ${issue?.message ?? ''}`,
      issue?.path.join('.') ?? '',
      `give name, kind, ${needed.join(', ')}, each as a text with its unit`,
    );
  }
  const { name, kind } = read.data;
  const figures = new Map<Figure, Typed>();
  for (const figure of figureNames) {
    const given = read.data[figure];
    if (given === undefined) continue;
    const typed = readTyped(given, kindOf(kind).measures);
    if (typed.kind === 'refused') {
      return refuse(typed.refusal.what, `${name}, ${figure}: ${given}`, typed.refusal.remedy);
    }
    figures.set(figure, typed.value);
  }
  const [least, greatest, resolution, permissibleError, repeatability] = needed.map((each) =>
    figures.get(each),
  );
  if (!least || !greatest || !resolution || !permissibleError || !repeatability) {
    return refuse('the instrument is not complete', name, `give ${needed.join(', ')}`);
  }
  const master = read.data['set-in'];
  const size = figures.get('set-size');
  const shown = figures.get('set-shown');
  if ([master, size, shown].some(Boolean) && !(master && size && shown)) {
    return refuse(
      'it is not said wholly what it was set in',
      name,
      'give set-in, set-size and set-shown together, or none of them',
    );
  }
  return answer({
    name,
    kind,
    range: { least, greatest },
    resolution,
    permissibleError,
    repeatability,
    ...present('zero', figures.get('zero')),
    ...present('turn', figures.get('turn')),
    ...present('setTo', master && size && shown ? { master, size, shown } : undefined),
    ...present('correction', figures.get('correction')),
    ...present('correctionUncertainty', figures.get('correction-uncertainty')),
    ...present('material', read.data.material),
  });
};
