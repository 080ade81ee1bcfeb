/** @module Prints how well doubts do: slips found and told rightly, sets of readings found wrong, honest readings doubted. */
import type { Characteristic } from '../src/engine/engine-type.ts';
import type { Instrument } from '../src/measure/instrument.ts';
import { quillfeather } from '../test/engines/demo-engines.ts';
import { instrumentOf, type Tally, tryHonest, trySlip } from '../test/engines/doubt-trial.ts';
import { setSlips, tryHonestSets, trySet } from '../test/engines/set-trial.ts';
import { kinds } from '../test/engines/slipped-reading.ts';
import { seeded } from '../test/engines/worn-engine.ts';

const engines = Number(process.argv[2] ?? 60);
const engine = quillfeather();

const characteristic = (name: string): Characteristic => {
  const found = engine.characteristics.get(name);
  if (!found) throw new Error(`no characteristic ${name}`);
  return found;
};

interface Trial {
  readonly of: Characteristic;
  readonly instrument: Instrument;
  readonly title: string;
}

const trial = (name: string, more: Partial<Instrument> = {}, note = ''): Trial => {
  const of = characteristic(name);
  return { of, instrument: { ...instrumentOf(of), ...more }, title: name + note };
};

const inside = { name: 'inside-50-100', turn: { text: '0.5', unit: 'mm' } };
const schemes = [
  trial('main-journal-diameter'),
  trial('big-end-journal-diameter'),
  trial('bore-diameter'),
  trial('bore-diameter', inside, ', thimble of 0.5 mm'),
  trial('main-shell-bore'),
];
const lone = [trial('piston-diameter'), trial('end-float')];

const share = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(2)} %`;

const print = (title: string, heads: readonly string[], rows: readonly (readonly string[])[]): void => {
  const all = [heads, ...rows];
  const widths = heads.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  console.log(`\n${title}`);
  for (const row of all) {
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    );
  }
};

const nothing: Tally = { told: 0, found: 0, right: 0, untold: 0, untoldFound: 0 };
const sum = (a: Tally, b: Tally): Tally => ({
  told: a.told + b.told,
  found: a.found + b.found,
  right: a.right + b.right,
  untold: a.untold + b.untold,
  untoldFound: a.untoldFound + b.untoldFound,
});
const cells = ({ told, found, right, untold, untoldFound }: Tally): readonly string[] => [
  String(told),
  share(found, told),
  share(right, found),
  `${untoldFound} of ${untold}`,
];
const heads = ['characteristic', 'slip', 'slips', 'found', 'value right', 'beyond telling, found'];

const table = (
  title: string,
  trials: readonly Trial[],
  when: 'whole scheme' | 'first reading',
  withFormer = false,
): void => {
  let all = nothing;
  const rows = trials.flatMap(({ of, instrument, title: name }) =>
    kinds.flatMap((kind) => {
      const tally = trySlip(engine, of, kind, engines, when, seeded(11), instrument, withFormer);
      all = sum(all, tally);
      return tally.told + tally.untold === 0 ? [] : [[name, kind, ...cells(tally)]];
    }),
  );
  print(title, heads, [...rows, ['all', '', ...cells(all)]]);
};

console.log(
  `${engines} engines of each pattern of wear. A slip is beyond telling where its figure is one that such an engine may honestly show.`,
);
table('One slip of 0.1 mm and more in a whole scheme of several readings a place', schemes, 'whole scheme');
table('The same where a place has a single reading', lone, 'whole scheme');
table('One slip in the very first reading of all', [...schemes, ...lone], 'first reading');
const former = ', sizes of a former overhaul known';
table(`One slip in a whole scheme${former}`, schemes, 'whole scheme', true);
table(`The same where a place has a single reading${former}`, lone, 'whole scheme', true);
table(`One slip in the very first reading of all${former}`, [...schemes, ...lone], 'first reading', true);

print(
  'Sets of readings',
  ['slip', 'characteristic', 'sets', 'found', 'beyond telling', 'honest readings', 'doubted'],
  setSlips.flatMap((slip) =>
    slip.of.map((name) => {
      const tally = trySet(engine, characteristic(name), slip, engines, seeded(15));
      return [
        slip.name,
        name,
        String(tally.tried),
        share(tally.found, tally.tried),
        String(tally.untold),
        String(tally.honest),
        share(tally.doubted, tally.honest),
      ];
    }),
  ),
);

const sets = tryHonestSets(engine, characteristic('bore-diameter'), engines, seeded(16));
print(
  'Honest readings doubted',
  ['characteristic', 'readings', 'whole scheme', 'readings', 'each as it is entered'],
  [
    ...[...schemes, ...lone].map(({ of, instrument, title }) => {
      const whole = tryHonest(engine, of, 3 * engines, 'whole scheme', seeded(13), instrument);
      const entry = tryHonest(engine, of, engines, 'every entry', seeded(14), instrument);
      return [
        title,
        String(whole.honest),
        share(whole.doubted, whole.honest),
        String(entry.honest),
        share(entry.doubted, entry.honest),
      ];
    }),
    ...[...schemes, ...lone].map(({ of, instrument, title }) => {
      const whole = tryHonest(engine, of, 3 * engines, 'whole scheme', seeded(13), instrument, true);
      const entry = tryHonest(engine, of, engines, 'every entry', seeded(14), instrument, true);
      return [
        `${title}, former sizes known`,
        String(whole.honest),
        share(whole.doubted, whole.honest),
        String(entry.honest),
        share(entry.doubted, entry.honest),
      ];
    }),
    ['bores taken twice, with ring gaps', String(sets.honest), share(sets.doubted, sets.honest)],
  ],
);
