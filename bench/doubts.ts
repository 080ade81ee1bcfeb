/** @module Prints how well doubts do: for each slip and characteristic, how many are found and told rightly, and false alarms. */
import type { Characteristic } from '../src/engine/engine-type.ts';
import { quillfeather } from '../test/engines/demo-engines.ts';
import { tryHonest, trySlip } from '../test/engines/doubt-trial.ts';
import { kinds } from '../test/engines/slipped-reading.ts';
import { seeded } from '../test/engines/worn-engine.ts';

const engines = Number(process.argv[2] ?? 100);
const engine = quillfeather();
const names = [
  'main-journal-diameter',
  'big-end-journal-diameter',
  'bore-diameter',
  'main-shell-bore',
  'piston-diameter',
  'end-float',
];
const characteristics = names.flatMap((name) => engine.characteristics.get(name) ?? []);

const share = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(2)} %`;

const print = (heads: readonly string[], rows: readonly (readonly string[])[]): void => {
  const all = [heads, ...rows];
  const widths = heads.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  for (const row of all)
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    );
};

const slipRows = (characteristic: Characteristic): readonly (readonly string[])[] =>
  kinds.flatMap((kind) => {
    const whole = trySlip(engine, characteristic, kind, engines, 'whole scheme', seeded(11));
    const first = trySlip(engine, characteristic, kind, engines, 'first reading', seeded(12));
    if (whole.told + whole.untold === 0) return [];
    return [
      [
        characteristic.name,
        kind,
        String(whole.told),
        share(whole.found, whole.told),
        share(whole.right, whole.found),
        `${whole.untoldFound} of ${whole.untold}`,
        String(first.told),
        share(first.found, first.told),
        share(first.right, first.found),
        `${first.untoldFound} of ${first.untold}`,
      ],
    ];
  });

print(
  [
    'characteristic',
    'slip',
    'whole',
    'found',
    'right',
    'untold found',
    'first',
    'found',
    'right',
    'untold found',
  ],
  characteristics.flatMap(slipRows),
);
console.log();
print(
  ['characteristic', 'honest readings', 'doubted, whole scheme', 'doubted, as entered'],
  characteristics.map((characteristic) => {
    const whole = tryHonest(engine, characteristic, 3 * engines, 'whole scheme', seeded(13));
    const entry = tryHonest(engine, characteristic, engines, 'every entry', seeded(14));
    return [
      characteristic.name,
      String(whole.honest),
      share(whole.doubted, whole.honest),
      share(entry.doubted, entry.honest),
    ];
  }),
);
