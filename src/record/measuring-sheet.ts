/** @module A blank measuring sheet to print and fill in by hand: boxes in the order of entry, numbered for typing in later. */

import type { Characteristic, EngineType } from '../engine/engine-type.ts';
import { placesOf } from '../measure/scheme.ts';
import { type SheetBox, sheetBoxes, unitMeant } from '../measure/sheet-box.ts';
import type { Typed } from '../quantity/typed.ts';
import { typedText } from '../quantity/typed.ts';
import { escaped, words } from './html.ts';
import { measuringSheetStyle } from './measuring-sheet-style.ts';
import { standAlonePage } from './stand-alone.ts';

/** What is known of the engine on the bench; lines to write on where it is not. */
export interface OnTheBench {
  readonly job?: string;
  readonly plate?: string;
  readonly owner?: string;
}

/** More boxes than this do not stand side by side on A4. */
const mostAbreast = 8;

/** A figure as the manual prints it: in both units, where it prints two. */
interface AsPrinted {
  readonly figure: Typed;
  readonly also?: Typed;
}

const printedText = ({ figure, also }: AsPrinted): string =>
  also === undefined ? typedText(figure) : `${typedText(figure)} (${typedText(also)})`;

const spanText = (least: AsPrinted | undefined, greatest: AsPrinted | undefined): string | undefined => {
  if (least && greatest)
    return least.figure.unit === greatest.figure.unit && !least.also
      ? `${least.figure.text} to ${printedText(greatest)}`
      : `${printedText(least)} to ${printedText(greatest)}`;
  if (least) return `at least ${printedText(least)}`;
  return greatest ? `at most ${printedText(greatest)}` : undefined;
};

const limitsText = ({ printedPairs }: EngineType, { name, limits }: Characteristic): string => {
  const printed = (side: string): AsPrinted | undefined => {
    const figure = limits?.printed[side];
    const at = ['characteristics', name, 'limits', ...side.split('.')].join('/');
    const also = printedPairs.find(({ path }) => path.join('/') === at)?.also;
    return figure && { figure, ...(also && { also }) };
  };
  const made = spanText(printed('new.least'), printed('new.greatest'));
  const worn = spanText(printed('wear.least'), printed('wear.greatest'));
  return [
    ...(made === undefined ? [] : [`as made ${made}`]),
    ...(worn === undefined ? [] : [`may go back ${worn}`]),
  ].join('; ');
};

interface Row {
  readonly name: string;
  readonly boxes: readonly SheetBox[];
}

interface Layout {
  readonly heads: readonly string[];
  readonly rows: readonly Row[];
}

const named = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(', ');

/** Places down the sheet and planes with their axes across it; a scheme that is too wide goes plane by plane. */
const layOutBoxes = (engine: EngineType, of: Characteristic, boxes: readonly SheetBox[]): Layout => {
  const abreast = of.planes.length * of.axes.length;
  const perPlane = abreast > mostAbreast;
  const heads = perPlane ? of.axes : of.planes.flatMap((plane) => of.axes.map((axis) => named(plane, axis)));
  const rows = placesOf(engine, of).flatMap((place): readonly Row[] => {
    const here = boxes.filter(({ cell }) => cell.place === place.id);
    return perPlane
      ? of.planes.map((plane) => ({
          name: named(place.title, plane),
          boxes: here.filter(({ cell }) => cell.plane === plane),
        }))
      : [{ name: place.title, boxes: here }];
  });
  return { heads: heads.map((head) => (head === '' ? 'reading' : head)), rows };
};

const line = (name: string, says = ''): string =>
  `<span class="line"><span>${escaped(name)}</span><b>${says === '' ? '&nbsp;' : words(says)}</b></span>`;

const sectionHtml = (engine: EngineType, of: Characteristic, boxes: readonly SheetBox[]): string => {
  const { heads, rows } = layOutBoxes(engine, of, boxes);
  const limits = limitsText(engine, of);
  return `<section>
<h2>${words(of.title)}, in ${escaped(unitMeant(of))}</h2>
<p class="limits">${limits === '' ? 'no limits given' : escaped(limits)}${of.source === undefined ? '' : ` (${words(of.source)})`}</p>
<p class="lines">${line(of.instrument ?? 'instrument')}${line('zero checked')}${line('part at, °C')}${line('by')}</p>
<table>
<thead><tr><th scope="col">place</th>${heads.map((head) => `<th scope="col">${words(head)}</th>`).join('')}</tr></thead>
<tbody>
${rows
  .map(
    ({ name, boxes: row }) =>
      `<tr><th scope="row">${words(name)}</th>${row
        .map(({ code }) => `<td><span class="box">${escaped(code)}</span></td>`)
        .join('')}</tr>\n`,
  )
  .join('')}</tbody>
</table>
</section>
`;
};

/**
 * The page: every cell that is read, characteristic by characteristic as hands take them, prints on A4.
 *
 * @param engine  engine type; its version stands on the sheet, since the numbers of the boxes belong to it
 * @param bench   what is known of the engine on the bench
 */
export const measuringSheet = (engine: EngineType, bench: OnTheBench = {}): string => {
  const boxes = Map.groupBy(sheetBoxes(engine), ({ cell }) => cell.characteristic);
  const sections = [...engine.characteristics.values()].flatMap((of) => {
    const own = boxes.get(of.name);
    return own === undefined ? [] : [sectionHtml(engine, of, own)];
  });
  const title = `Measuring sheet: ${engine.title}`;
  const checked =
    engine.checked === undefined
      ? 'figures not checked by a second person'
      : `figures checked by ${engine.checked.by}`;
  return standAlonePage(
    title,
    measuringSheetStyle,
    `<h1>${words(title)}</h1>
<p class="about">${words(engine.id)}, version ${engine.version}; limits from ${words(engine.source)}; ${words(checked)}.</p>
<p class="lines">${line('job', bench.job)}${line('plate', bench.plate)}${line('owner', bench.owner)}${line('date')}${line('bench at, °C')}</p>
<p class="about">Write every digit that is read. Cross a wrong figure out so that it can still be read, and write the right one beside it.
To type it in later: a table with the columns <b>box</b> and <b>reading</b>, number and letter of the box as printed; or box by box on the Measure sheet, which asks in the same order.</p>
${sections.join('')}
<p class="about">The maker's manual overrules the limits printed here.</p>
`,
  );
};
