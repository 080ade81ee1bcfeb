/** @module The machine shop's instruction to print: from measured to finished, in millimetres and inches, and on what terms. */
import type { Machining } from '../engine/engine-type.ts';
import { bareSpread, inMillimetres } from '../engine/shown-in.ts';
import type { OpenJob } from '../job/job.ts';
import {
  type Known,
  type MachinedPart,
  type MachinedPlace,
  type MachineShopSheet,
  machiningLimits,
} from '../job/order/machine-shop.ts';
import { formatFigure } from '../quantity/figure.ts';
import { inwardBare, inwardText } from '../quantity/inward.ts';
import { typedText } from '../quantity/typed.ts';
import { type Cell, paperPage, plate, table, words } from './paper.ts';

const figure = (says: string): Cell => ({ says, figure: true });

/** @example knownText({ value: 54.9121, expanded: 0.0034 }) // '54.912 ± 0.004' */
export const knownText = ({ value, expanded }: Known): string =>
  `${formatFigure(value, 3)} ± ${bareSpread(expanded, inMillimetres)}`;

/** How much comes off the diameter, in words. */
export const comesOffText = ({ comesOff }: MachinedPlace): string => {
  if (comesOff === undefined) return '';
  const { least, greatest } = comesOff;
  return least < 0
    ? `${formatFigure(-least, 3)} mm short of cleaning up`
    : `${formatFigure(least, 3)} to ${formatFigure(greatest, 3)} mm`;
};

const bothUnits = (machining: Machining, what: 'fillet' | 'chamfer'): string => {
  const { mm, in: inches } = machiningLimits(machining, what);
  const metric = inwardText(mm, 'mm');
  return metric === '' ? '' : `${metric} (${inwardText(inches, 'in')})`;
};

const roughness = ({ printed }: Machining): string => {
  const least = printed['finish.least'];
  const greatest = printed['finish.greatest'];
  if (least && greatest) return `Ra ${typedText(least)} to ${typedText(greatest)}`;
  if (greatest) return `Ra ${typedText(greatest)} at most`;
  return least ? `Ra ${typedText(least)} at least` : '';
};

/** What is to be kept to beside the size, each in words. */
export const termsOf = (machining: Machining | undefined): readonly { name: string; says: string }[] => {
  if (machining === undefined) return [];
  const { before, after } = machining.crackTest;
  return [
    {
      name: 'Crack test before',
      says: before === undefined ? '' : `by ${before}; do not machine a cracked part`,
    },
    { name: 'Finish', says: roughness(machining) },
    { name: 'Fillet', says: bothUnits(machining, 'fillet') },
    { name: 'Oil holes', says: bothUnits(machining, 'chamfer') },
    { name: 'Mark', says: machining.marks ?? '' },
    ...machining.also.map((says) => ({ name: 'Also', says })),
    {
      name: 'Crack test after',
      says: after === undefined ? '' : `by ${after}; send the certificate back with the part`,
    },
    { name: 'From', says: machining.source ?? '' },
  ].filter(({ says }) => says !== '');
};

const partHtml = ({ line, characteristic, finished, places, machining }: MachinedPart): string => {
  const rows = places.map((place): readonly Cell[] => [
    { says: place.title },
    figure(place.from === undefined ? 'not measured' : knownText(place.from.least)),
    figure(place.from === undefined ? '' : knownText(place.from.greatest)),
    figure(inwardBare(finished.mm)),
    figure(inwardBare(finished.in)),
    figure(comesOffText(place)),
    { says: '' },
  ]);
  return `<section>
<h2>${words(line.says)}</h2>
${table(
  `${characteristic.title}, place by place`,
  ['Place', 'Measured least, mm', 'Greatest, mm', 'Finish to, mm', 'Finish to, in', 'Comes off', 'Made'],
  rows,
)}${plate(termsOf(machining))}</section>
`;
};

const paperOf = (job: OpenJob, { supplier, parts }: MachineShopSheet): string => {
  const { booked, sheet } = job;
  const first = parts[0]?.line.line;
  const order = [...job.orders.values()].findLast(({ lines }) => lines.some(({ line }) => line === first));
  return `<h1>Machine shop’s instruction</h1>
${plate([
  { name: 'To', says: supplier },
  { name: 'From', says: booked.shop ?? '' },
  { name: 'Order', says: order === undefined ? 'not placed yet' : `${order.order}, due ${order.due}` },
  { name: 'For', says: `job ${booked.number}: ${sheet.engine.title}, plate ${booked.plate}` },
  {
    name: 'Figures from',
    says: `${sheet.engine.source}; engine type ${sheet.engine.id} version ${sheet.engine.version}`,
  },
])}<p>Finished limits in inches are rounded inwards: what keeps to them keeps to the millimetres. Sizes at 20 °C. If a place does not clean up, or a crack shows, stop and call the shop.</p>
${parts.map(partHtml).join('')}<p>The maker’s manual overrules what is printed here.</p>
<div class="signs"><div>For the shop: name, signature, date</div><div>For the machine shop: name, signature, date</div></div>
`;
};

/** The page: one paper a machine shop, each on sheets of its own. */
export const machineShopPage = (job: OpenJob, sheets: readonly MachineShopSheet[]): string =>
  paperPage(
    `Machine shop’s instruction for job ${job.booked.number}`,
    sheets.map((sheet) => paperOf(job, sheet)),
  );
