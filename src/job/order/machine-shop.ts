/** @module The machine shop's instruction: each place from what it measured to what it must become, and on what terms. */
import type { Characteristic, Component, Machining, SizeStep } from '../../engine/engine-type.ts';
import { sizeInCell } from '../../measure/cell-size.ts';
import { fittedSize } from '../../measure/fitted-size.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellsOf } from '../../measure/scheme.ts';
import type { Sheet } from '../../measure/sheet.ts';
import { coverageFactor } from '../../quantity/coverage.ts';
import { type InwardLimits, inwardLimits } from '../../quantity/inward.ts';
import { effectiveFreedom, standardUncertainty, type Uncertain } from '../../quantity/uncertain.ts';
import type { OpenJob } from '../job.ts';
import { placesIn } from './arrival.ts';
import { type NeededLine, neededLines } from './needed.ts';

/** A size with half the width of its 95 % interval, mm. */
export interface Known {
  readonly value: number;
  readonly expanded: number;
}

export interface MachinedPlace {
  readonly place: string;
  readonly title: string;
  /** Of all that was read there; none where nothing was. */
  readonly from?: { readonly least: Known; readonly greatest: Known };
  /** How much comes off the diameter, mm: at the least and at the most worn point; negative where it does not clean up. */
  readonly comesOff?: { readonly least: number; readonly greatest: number };
}

export interface MachinedPart {
  readonly line: NeededLine;
  readonly component: Component;
  /** What is machined. */
  readonly characteristic: Characteristic;
  /** The finished size, by unit. */
  readonly finished: Readonly<Record<'mm' | 'in', InwardLimits>>;
  readonly places: readonly MachinedPlace[];
  readonly machining?: Machining;
}

export interface MachineShopSheet {
  readonly supplier: string;
  readonly parts: readonly MachinedPart[];
}

/** What counted before the part went away, where it is back already. */
const sizeBefore = (job: OpenJob, cell: Cell): Uncertain | undefined => {
  const before = job.readBefore.get(cellKey(cell));
  if (before === undefined) return sizeInCell(job.sheet, cell);
  const sheet: Sheet = { ...job.sheet, readings: new Map([[cellKey(cell), before]]) };
  return sizeInCell(sheet, cell);
};

const known = (size: Uncertain): Known => {
  const u = standardUncertainty(size);
  return { value: size.value, expanded: u === 0 ? 0 : u * coverageFactor(0.95, effectiveFreedom(size)) };
};

const measuredAt = (job: OpenJob, of: Characteristic, place: string): MachinedPlace['from'] => {
  const sizes = cellsOf(job.sheet.engine, of.name, place)
    .flatMap((cell) => sizeBefore(job, cell) ?? [])
    .sort((a, b) => a.value - b.value);
  const [least] = sizes;
  const greatest = sizes.at(-1);
  return least && greatest && { least: known(least), greatest: known(greatest) };
};

const comesOff = (
  of: Characteristic,
  step: SizeStep | undefined,
  from: NonNullable<MachinedPlace['from']>,
): MachinedPlace['comesOff'] => {
  const { least, greatest } = step?.limits.new ?? {};
  if (least === undefined || greatest === undefined) return undefined;
  return of.wears === 'smaller'
    ? { least: from.least.value - greatest, greatest: from.greatest.value - least }
    : { least: least - from.greatest.value, greatest: greatest - from.least.value };
};

/** Where it is not standard before it goes away: whoever sets the machine looks for that size. */
const standsAt = ({ sheet }: OpenJob, component: Component, place: string): string => {
  const { sizesReceived: _, ...before } = sheet;
  const size = fittedSize(before, component.name, place);
  return size === 'standard' ? '' : `, stands at ${size}`;
};

const partOf = (job: OpenJob, line: NeededLine): readonly MachinedPart[] => {
  const { engine } = job.sheet;
  const component = engine.components.get(line.component ?? '');
  const of = engine.characteristics.get(component?.sizes?.of ?? '');
  if (component === undefined || of === undefined) return [];
  const step = component.sizes?.steps.find(({ name }) => name === line.size);
  const printed = (step?.limits ?? of.limits)?.printed;
  const made = { least: printed?.['new.least'], greatest: printed?.['new.greatest'] };
  return [
    {
      line,
      component,
      characteristic: of,
      finished: { mm: inwardLimits(made, 'mm'), in: inwardLimits(made, 'in') },
      places: placesIn(engine, component, of, line.places).map((place) => {
        const from = measuredAt(job, of, place);
        // Of a sleeve or of metal laid on, nothing can be said from the size as found.
        const off = from && line.does === 'machine' ? comesOff(of, step, from) : undefined;
        return {
          place,
          title: `${engine.places.get(place)?.title ?? place}${standsAt(job, component, place)}`,
          ...(from && { from }),
          ...(off && { comesOff: off }),
        };
      }),
      ...(component.machining && { machining: component.machining }),
    },
  ];
};

const machined = ({ does }: NeededLine): boolean =>
  does === 'machine' || does === 'sleeve' || does === 'build up';

/**
 * What each machine shop is told of the parts that the chosen plan gives it.
 *
 * @param job  with its plan; sizes are those read before the part went away
 * @returns one a supplier, in the order of the engine type; lengths in mm, finished limits also in inches, rounded inwards
 */
export const machineShopSheetsOf = (job: OpenJob): readonly MachineShopSheet[] =>
  [...Map.groupBy(neededLines(job).filter(machined), ({ supplier }) => supplier)].flatMap(
    ([supplier, lines]) => {
      const parts = lines.flatMap((line) => partOf(job, line));
      return parts.length === 0 ? [] : [{ supplier, parts }];
    },
  );

/** Limits that the machine shop is told beside the finished size: `finish`, `fillet`, `chamfer`, in both units. */
export const machiningLimits = (
  { printed }: Machining,
  what: 'fillet' | 'chamfer',
): Readonly<Record<'mm' | 'in', InwardLimits>> => {
  const made = { least: printed[`${what}.least`], greatest: printed[`${what}.greatest`] };
  return { mm: inwardLimits(made, 'mm'), in: inwardLimits(made, 'in') };
};
