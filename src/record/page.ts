/** @module The record as one HTML page that stands alone, prints on A4 and carries the journal it is computed from. */
import { figuresOf } from './figures.ts';
import { escaped, scriptJson, words } from './html.ts';
import { pageStyle } from './page-style.ts';
import { noPictures, type PicturesHeld, pictureFigures } from './picture-figures.ts';
import { plate } from './plate.ts';
import { recordFormat } from './record-file.ts';
import type { RecordModel, RecordSection, RecordTable } from './record-model.ts';
import { picturesName } from './sections/pictures.ts';

interface Beside {
  readonly drawing?: string;
  readonly pictures?: PicturesHeld;
}

/** A figure and its unit stay on one line. */
const cellHtml = (cell: string): string =>
  words(cell)
    .replace(/(\d) (mm|%|°C|bar|rpm|h)(?!\w)/g, '$1&nbsp;$2')
    .replace(/± (?=\d)/g, '±&nbsp;');

const tableHtml = (table: RecordTable, title: string): string => {
  const heads = table.heads.map((head) => `<th scope="col">${escaped(head)}</th>`).join('');
  const rows = table.rows
    .map(
      (row) =>
        `<tr${row.marked ? ' class="marked"' : ''}>${row.cells.map((cell) => `<td>${cellHtml(cell)}</td>`).join('')}</tr>\n`,
    )
    .join('');
  return `<div class="sheet" tabindex="0" role="region" aria-label="${escaped(title)}"><table>\n<thead><tr>${heads}</tr></thead>\n<tbody>\n${rows}</tbody>\n</table></div>\n`;
};

const sectionHtml = (section: RecordSection, below = ''): string => {
  const says = section.says.map((line) => `<p>${words(line)}</p>\n`).join('');
  const table =
    section.table === undefined || section.table.rows.length === 0
      ? ''
      : tableHtml(section.table, section.title);
  return `<section id="${escaped(section.name)}">\n<h2>${escaped(section.title)}</h2>\n${says}${table}${below}</section>\n`;
};

/** At the foot of each sheet of paper: the beginning of the last hash, so that no sheet can be changed for another. */
const everyPage = (hash: string): string =>
  `@page { @bottom-left { content: "journal ${hash.replace(/[^0-9a-f]/g, '').slice(0, 16)}"; font: 8pt monospace; } @bottom-right { content: "sheet " counter(page) " of " counter(pages); font: 8pt sans-serif; } }\n`;

/**
 * Writes the record's page.
 *
 * @param model   what the record shows
 * @param journal the events it was computed from, put inside so that anyone can compute it again
 * @param beside  the engine's map as SVG text, where there is one, and the bytes of the pictures
 */
export const recordPage = (model: RecordModel, journal: readonly unknown[], beside: Beside = {}): string => {
  const { drawing = '', pictures = noPictures } = beside;
  const held = { format: recordFormat, journal, figures: figuresOf(model) };
  const figure =
    drawing === ''
      ? ''
      : `<figure>${drawing}<figcaption>The engine along its crank, places marked as found.</figcaption></figure>\n`;
  const sections = model.sections.map((section) =>
    sectionHtml(section, section.name === picturesName ? pictureFigures(model.pictures, pictures) : ''),
  );
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(model.title)}</title>
<style>${pageStyle}${everyPage(model.hash)}</style>
</head>
<body>
<main>
<h1>${words(model.title)}</h1>
${plate(model.heading)}${figure}${sections.join('')}<section class="safety" id="safety">
<h2>Before anyone relies on this</h2>
${model.safety.map((line) => `<p>${escaped(line)}</p>\n`).join('')}</section>
<section id="journal">
<h2>How to check it</h2>
<p>The journal of ${model.events} events stands inside this page. <code>endfloat verify</code> with this file computes every figure again and checks the chain; its last hash is</p>
<p class="hash">${escaped(model.hash)}</p>
</section>
<div class="signs"><div>For the shop: name, signature, date</div><div>For the owner: name, signature, date</div></div>
</main>
<script type="application/json" id="endfloat-record">${scriptJson(held)}</script>
</body>
</html>
`;
};
