/** @module Orders to print and send, a sheet for each supplier: what, how many, for which engine, at what price, by when. */

import type { Charge, OrderedLine } from '../job/event.ts';
import type { OpenJob } from '../job/job.ts';
import { moneyText } from './figure-text.ts';
import { type Cell, paperPage, plate, table, words } from './paper.ts';
import { placeTitle } from './sections/named.ts';

/** An order as it was placed, or as it would be. */
export interface OrderPaper {
  readonly supplier: string;
  readonly lines: readonly Pick<OrderedLine, 'says' | 'does' | 'component' | 'places' | 'count' | 'cents'>[];
  readonly charges: readonly Charge[];
  readonly order?: string;
  readonly due?: string;
  readonly note?: string;
  /** Who placed it. */
  readonly by?: string;
  readonly at?: string;
}

const figure = (says: string): Cell => ({ says, figure: true });

/** All places of one kind are `main bearing 1 to 4`; else each by its title. */
const placesText = ({ sheet: { engine } }: OpenJob, places: readonly string[]): string => {
  const [first = '', ...others] = places.map((id) => placeTitle(engine, id));
  const last = others.at(-1)?.split(' ').at(-1);
  const kinds = new Set(places.map((id) => engine.places.get(id)?.kind));
  const numbers = places.map((id) => engine.places.get(id)?.number ?? 0);
  const inRow = numbers.every((number, at) => at === 0 || number === (numbers[at - 1] ?? 0) + 1);
  return kinds.size === 1 && inRow && others.length > 1
    ? `${first} to ${last}`
    : [first, ...others].join(', ');
};

/** Lines that come back with a paper about cracks. */
const certificates = ({ sheet: { engine } }: OpenJob, paper: OrderPaper): readonly string[] =>
  paper.lines.flatMap(({ component, does, says }) => {
    const after = engine.components.get(component ?? '')?.machining?.crackTest.after;
    return after === undefined || does === 'replace' || does === 'exchange'
      ? []
      : [`${says}: with a certificate of a crack test by ${after} after machining`];
  });

const paperOf = (job: OpenJob, paper: OrderPaper): string => {
  const { booked, sheet } = job;
  const money = (cents: number): Cell => figure(moneyText(cents, ''));
  const total = [...paper.lines, ...paper.charges].reduce((sum, { cents }) => sum + cents, 0);
  const rows = [
    ...paper.lines.map((line, at): readonly Cell[] => [
      figure(String(at + 1)),
      { says: line.says },
      { says: placesText(job, line.places) },
      figure(String(line.count)),
      money(line.cents),
    ]),
    ...paper.charges.map((charge): readonly Cell[] => [
      { says: '' },
      { says: charge.says },
      { says: 'once' },
      { says: '' },
      money(charge.cents),
    ]),
    [{ says: '' }, { says: 'in all' }, { says: '' }, { says: '' }, money(total)],
  ];
  const asked = certificates(job, paper);
  const title = `Order${paper.order === undefined ? ', not placed yet' : ` ${paper.order}`}`;
  return `<h1>${words(title)}</h1>
${plate([
  { name: 'To', says: paper.supplier },
  { name: 'From', says: booked.shop ?? '' },
  { name: 'For', says: `job ${booked.number}: ${sheet.engine.title}, plate ${booked.plate}` },
  { name: 'Here by', says: paper.due ?? '' },
  { name: 'Ordered', says: paper.at === undefined ? '' : `${paper.at.slice(0, 10)}, ${paper.by ?? ''}` },
  { name: 'Note', says: paper.note ?? '' },
])}${table(`lines for ${paper.supplier}`, ['', 'What', 'For', 'Count', booked.currency], rows)}${
  asked.length === 0 ? '' : `<ul>${asked.map((line) => `<li>${words(line)}</li>`).join('')}</ul>\n`
}<p>Please write our order number on the delivery note. What comes is counted and measured on arrival against this order.</p>
<div class="signs"><div>For the shop: name, signature, date</div><div>Received: name, signature, date</div></div>
`;
};

/** The page: one paper an order, each on sheets of its own. */
export const orderPage = (job: OpenJob, papers: readonly OrderPaper[]): string =>
  paperPage(
    `Orders for job ${job.booked.number}`,
    papers.map((paper) => paperOf(job, paper)),
  );
