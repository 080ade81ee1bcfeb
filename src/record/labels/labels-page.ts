/** @module The page of labels: sheets of the size that lies in the printer, each label in its spot, printed as large as it is drawn. */

import { type SvgNode, svg, svgText } from '../../drawing/svg.ts';
import type { Tag } from '../../job/home/tag.ts';
import type { OpenJob } from '../../job/job.ts';
import { escaped } from '../html.ts';
import { standAlonePage } from '../stand-alone.ts';
import { cardDrawn } from './card.ts';
import { labelDrawn } from './label.ts';
import { type LabelSize, spotsOf } from './label-size.ts';

export interface LabelsAsked {
  readonly size: LabelSize;
  readonly tags: readonly Tag[];
  /** Spots of the first sheet that are used up already. */
  readonly skip?: number;
}

const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

const oneDrawn = (job: OpenJob, tag: Tag, size: LabelSize): SvgNode => {
  const { drawn } = size.card ? cardDrawn(job, tag, size.label) : labelDrawn(job, tag, size.label);
  // Along the strip: the words' left end leaves the printer first.
  return size.turned ? svg('g', { transform: `translate(${size.page.width} 0) rotate(90)` }, drawn) : drawn;
};

/** Every sheet as a drawing of its own, its unit a millimetre. */
const sheetsOf = (job: OpenJob, { size, tags, skip = 0 }: LabelsAsked): readonly SvgNode[] => {
  const spots = spotsOf(size);
  const first = Math.min(Math.max(0, Math.floor(skip)), spots.length - 1);
  const sheets = Math.ceil((tags.length + first) / spots.length);
  return Array.from({ length: sheets }, (_, at) =>
    svg(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: `${size.page.width}mm`,
        height: `${size.page.height}mm`,
        viewBox: `0 0 ${size.page.width} ${size.page.height}`,
        role: 'img',
        'aria-label': `Labels, sheet ${at + 1} of ${sheets}`,
      },
      ...spots.flatMap(({ x, y }, spot) => {
        const tag = tags[at * spots.length + spot - first];
        return tag === undefined || at * spots.length + spot < first
          ? []
          : [
              svg(
                'g',
                { 'data-tag': tag.id, transform: `translate(${thousandths(x)} ${thousandths(y)})` },
                oneDrawn(job, tag, size),
              ),
            ];
      }),
    ),
  );
};

/** The page that stands alone; it has no margin of its own, since the sheets have theirs. */
export const labelsPage = (job: OpenJob, asked: LabelsAsked): string => {
  const { page } = asked.size;
  const title = `Labels for job ${job.booked.number}`;
  const style = `
@page { size: ${page.width}mm ${page.height}mm; margin: 0; }
* { box-sizing: border-box; }
body { margin: 0; background: #fff; color: #000; font-family: "Atkinson Hyperlegible Next Variable", "Atkinson Hyperlegible Next", "Liberation Sans", Arial, sans-serif; }
h1, p { margin: 3mm; font-size: 11pt; }
svg { display: block; break-after: page; font-variant-numeric: tabular-nums; }
svg:last-of-type { break-after: auto; }
@media screen { svg { outline: 0.2mm solid #7b8794; margin: 3mm; } }
@media print { h1, p { display: none; } }
`;
  return standAlonePage(
    title,
    style,
    `<h1>${escaped(title)}</h1>
<p>${escaped(asked.size.title)}. Print at 100 %, on paper of this size, without headers; not “fit to page”.</p>
${sheetsOf(job, asked).map(svgText).join('\n')}
`,
  );
};
