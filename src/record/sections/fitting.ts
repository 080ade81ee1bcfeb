/** @module The record's parts from stock: as measured, where each went, and the clearance that was reckoned. */
import { type ComponentFit, fitLimits, fittingsOf, type PlaceFit } from '../../job/fitting.ts';
import type { OpenJob } from '../../job/job.ts';
import { expanded } from '../../quantity/uncertain.ts';
import { errorText, knownText, lengthText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';

const measuredText = ({ stock }: ComponentFit, parts: readonly string[]): string =>
  parts
    .map((name) => {
      const measured = stock.find((part) => part.name === name)?.measured;
      return measured ? `${name} ${knownText(measured.value, expanded(measured, 0.95))}` : name;
    })
    .join(' + ');

const rowOf = (fit: ComponentFit, { place, title, room, assigned }: PlaceFit): RecordRow => ({
  of: `${place} ${fit.component.name}`,
  cells: [
    fit.component.title,
    title,
    room === undefined ? '' : knownText(room.value, expanded(room, 0.95)),
    assigned === undefined ? 'none from stock' : measuredText(fit, assigned.parts),
    assigned?.clearance === undefined ? '' : knownText(assigned.clearance.value, assigned.expanded ?? 0),
    assigned?.off === undefined ? '' : errorText(assigned.off),
    assigned?.verdict ?? '',
  ],
  ...(assigned === undefined || assigned.verdict === 'within' ? {} : { marked: true as const }),
});

const says = (fit: ComponentFit): string => {
  const limits = fitLimits(fit)
    .map(({ least, greatest }) => `from ${lengthText(least)} to ${lengthText(greatest)}`)
    .join(' or ');
  return `${fit.component.title}: ${fit.fitting.measured} was measured on the loose parts; clearance ${limits}, reckoned here, and measured as fitted where the order of work asks for it.`;
};

/** None where no part was fitted from stock: parts that came in sets have nothing to tell here. */
export const fittingSections = (job: OpenJob): readonly RecordSection[] => {
  const fits = fittingsOf(job).filter(({ places }) => places.some(({ assigned }) => assigned));
  if (fits.length === 0) return [];
  return [
    {
      name: 'fitting',
      title: 'Parts fitted from stock by their sizes',
      says: fits.map(says),
      table: {
        heads: ['Component', 'Place', 'Room', 'Parts', 'Clearance', 'From the middle', 'Verdict'],
        rows: fits.flatMap((fit) => fit.places.map((place) => rowOf(fit, place))),
      },
      derived: true,
    },
  ];
};
