/** @module How a job left its engine: sizes as they went, for the next overhaul of the same engine to start from. */
import type { EngineType } from '../engine/engine-type.ts';
import { quantityOf } from '../engine/shown-in.ts';
import { placesOfComponent } from '../measure/fitted-size.ts';
import type { FormerCell, FormerOverhaul, FormerPlaceSize } from '../measure/former-overhaul.ts';
import { judgeCell } from '../measure/judge.ts';
import { cellsOf, placesOf } from '../measure/scheme.ts';
import { formatFigure } from '../quantity/figure.ts';
import type { Typed } from '../quantity/typed.ts';
import { unitsOf } from '../quantity/unit.ts';
import { decided } from './decided.ts';
import type { OpenJob } from './job.ts';
import type { JobLine } from './job-line.ts';
import { sizeToFit } from './size-at.ts';

/** Finer than anything is read to, in the core's units. */
const decimals = 5;

const ownerOf = (engine: EngineType, name: string): string | undefined =>
  [...engine.components.values()].find(({ judgedBy }) => judgedBy.includes(name))?.name;

/** Whether the size that counts was read after the plan was chosen: as built, and no longer as found. */
const readSince = (job: OpenJob, reading: string | undefined): boolean =>
  job.plan === undefined || (job.takenBy.get(reading ?? '')?.at ?? '') > job.plan.at;

/** Places that go at another size than as made. */
const sizesLeft = (job: OpenJob): readonly FormerPlaceSize[] =>
  [...job.sheet.engine.components.values()].flatMap((component) =>
    component.sizes
      ? placesOfComponent(job.sheet.engine, component).flatMap((place): readonly FormerPlaceSize[] => {
          const size = sizeToFit(job, component.name, place);
          return size === 'standard' ? [] : [{ component: component.name, place, size }];
        })
      : [],
  );

/** The overhaul that a job was; undefined for one that has not been handed over. */
export const leftBy = (job: OpenJob): FormerOverhaul | undefined => {
  if (job.handedOver === undefined) return undefined;
  const { engine } = job.sheet;
  const cells = [...engine.characteristics.values()].flatMap((characteristic): readonly FormerCell[] => {
    if (characteristic.derived) return [];
    const { name } = characteristic;
    const unit = unitsOf(quantityOf(characteristic))[0] ?? '';
    const typed = (value: number): Typed => ({ text: formatFigure(value, decimals), unit });
    const owner = ownerOf(engine, name);
    return placesOf(engine, characteristic).flatMap(({ id }) => {
      const does = owner === undefined ? undefined : decided(job, owner, id);
      const anew = does !== undefined && does !== 'put back';
      return cellsOf(engine, name, id).flatMap((cell): readonly FormerCell[] => {
        const { size, expanded, reading } = judgeCell(job.sheet, cell);
        if (size === undefined) return anew ? [{ cell, anew }] : [];
        // Found at another size than it went with: what it went with nobody measured.
        if (anew && !readSince(job, reading)) return [{ cell, anew }];
        return [{ cell, anew, size: typed(size.value), expanded: typed(expanded ?? 0) }];
      });
    });
  });
  const { number, hoursRun } = job.booked;
  return { number, on: job.handedOver.at.slice(0, 10), hoursRun, cells, sizes: sizesLeft(job) };
};

const plain = (plate: string): string => plate.replace(/[\s-]+/g, '').toUpperCase();

/**
 * Jobs in which an engine was in the shop before, the latest first.
 *
 * @param lines   the jobs list
 * @param engine  title of its type
 * @param plate   as found; one without a plate is not known again
 */
export const sameEngine = <Line extends Pick<JobLine, 'engine' | 'plate' | 'changed'>>(
  lines: readonly Line[],
  { engine, plate }: Pick<JobLine, 'engine' | 'plate'>,
): readonly Line[] =>
  plain(plate) === ''
    ? []
    : lines
        .filter((line) => line.engine === engine && plain(line.plate) === plain(plate))
        .toSorted((a, b) => (a.changed < b.changed ? 1 : -1));
