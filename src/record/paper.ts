/** @module A paper that goes out of the shop, such as an order: its frame, its head, and how it prints. */

import { escaped } from './html.ts';
import { pageStyle } from './page-style.ts';
import type { Line } from './record-model.ts';
import { standAlonePage } from './stand-alone.ts';

/** Words typed by people may be written from right to left: they turn nothing round that stands beside them. */
export const words = (text: string): string => `<bdi>${escaped(text)}</bdi>`;

export const plate = (lines: readonly Line[]): string =>
  `<dl class="plate">\n${lines
    .filter(({ says }) => says !== '')
    .map(({ name, says }) => `<dt>${escaped(name)}</dt><dd>${words(says)}</dd>\n`)
    .join('')}</dl>\n`;

export interface Cell {
  readonly says: string;
  /** A figure stands to the right. */
  readonly figure?: true;
}

export const table = (title: string, heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  `<div class="sheet" tabindex="0" role="region" aria-label="${escaped(title)}"><table>
<thead><tr>${heads.map((head) => `<th scope="col">${escaped(head)}</th>`).join('')}</tr></thead>
<tbody>
${rows
  .map(
    (cells) =>
      `<tr>${cells
        .map(
          ({ says, figure }) =>
            `<td${figure ? ' class="figure"' : ''}>${says === '' ? '&nbsp;' : words(says)}</td>`,
        )
        .join('')}</tr>\n`,
  )
  .join('')}</tbody>
</table></div>
`;

const style = `
@page { @bottom-right { content: "sheet " counter(page) " of " counter(pages); font: 8pt sans-serif; } }
dl.plate, .sheet { margin-bottom: 4mm; }
.paper + .paper { break-before: page; margin-top: 14mm; }
td.figure { text-align: right; white-space: nowrap; }
tr.sum td { border-top: 0.4mm solid #16202b; font-weight: 700; }
h3 { margin: 6mm 0 1mm; font-size: 11pt; break-after: avoid; }
ul { margin: 1mm 0 3mm; padding-left: 5mm; }
`;

/** The page that stands alone; each paper in it begins on a sheet of its own. */
export const paperPage = (title: string, papers: readonly string[]): string =>
  standAlonePage(
    title,
    `${pageStyle}${style}`,
    papers.map((paper) => `<div class="paper">\n${paper}</div>\n`).join(''),
  );
