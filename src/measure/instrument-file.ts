/** @module An instrument as a file gives it, figures with their units, to an instrument of the register. */
import { z } from 'zod';
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
});

type Figure = Exclude<keyof z.infer<typeof instrumentFile>, 'name' | 'kind'>;

const figureNames = [
  'least',
  'greatest',
  'resolution',
  'permissible-error',
  'repeatability',
  'zero',
  'turn',
] as const;

/**
 * Reads an instrument: `{ "name": "mic-50-75", "kind": "outside micrometer", "least": "50 mm", "greatest":
 * "75 mm", "resolution": "0.001 mm", "permissible-error": "0.004 mm", "repeatability": "0.0015 mm",
 * "zero": "0.000 mm", "turn": "0.5 mm" }`; zero and turn may be missing.
 */
export const readInstrument = (value: unknown): Answer<Instrument> => {
  const read = instrumentFile.safeParse(value);
  if (!read.success) {
    const issue = read.error.issues[0];
    return refuse(
      `the instrument is not complete: ${issue?.message ?? ''}`,
      issue?.path.join('.') ?? '',
      `give name, kind, ${figureNames.join(', ')}, each as a text with its unit`,
    );
  }
  const { name, kind } = read.data;
  const figures = new Map<Figure, Typed>();
  for (const figure of figureNames) {
    const given = read.data[figure];
    if (given === undefined) continue;
    const typed = readTyped(given, 'length');
    if (typed.kind === 'refused') {
      return refuse(typed.refusal.what, `${name}, ${figure}: ${given}`, typed.refusal.remedy);
    }
    figures.set(figure, typed.value);
  }
  const [least, greatest, resolution, permissibleError, repeatability, zero, turn] = figureNames.map((each) =>
    figures.get(each),
  );
  if (!least || !greatest || !resolution || !permissibleError || !repeatability) {
    return refuse('the instrument is not complete', name, `give ${figureNames.join(', ')}`);
  }
  return answer({
    name,
    kind,
    range: { least, greatest },
    resolution,
    permissibleError,
    repeatability,
    ...(zero && { zero }),
    ...(turn && { turn }),
  });
};
