/** @module A job with thousands of readings, told through the same decisions that any job goes through. */

import { instruments } from '../../demo/instruments.ts';
import type { Request } from '../../src/job/command.ts';
import { decide } from '../../src/job/decide.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { blankJob, evolve } from '../../src/job/evolve.ts';
import type { OpenJob } from '../../src/job/job.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { engineText } from './workshop.ts';

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');

/** UUIDv7 in form, counted instead of drawn, so that every run is the same. */
const idOf = (count: number): string =>
  `01a00000-${hex(count >> 16, 4)}-7${hex(count & 0xfff, 3)}-8000-${hex(count, 12)}`;

/** A size in the middle of what may go back, strewn by some hundredths of the zone; count says how. */
const sizeOf = (job: OpenJob, characteristic: string, count: number): string => {
  const limits = job.sheet.engine.characteristics.get(characteristic)?.limits?.goesBack;
  const low = limits?.least ?? (limits?.greatest ?? 1) * 0.6;
  const high = limits?.greatest ?? low + 0.04;
  return (low + (high - low) * (0.45 + ((count * 7919) % 97) / 970)).toFixed(3);
};

export const jobOfThousands = (
  readings: number,
): { readonly id: string; readonly events: readonly JobEvent[] } => {
  const id = idOf(1);
  const events: JobEvent[] = [];
  let job = blankJob;
  const tell = (request: Request) => {
    const at = new Date(Date.UTC(2026, 4, 4) + events.length * 20_000).toISOString();
    const decided = decide(job, {
      id: idOf(events.length + 2),
      job: id,
      at,
      actor: 'Ines Fallow',
      bench: 'bench 2',
      request,
    });
    if (decided.kind === 'refused') throw new Error(JSON.stringify(decided.refusal));
    events.push(decided.value);
    job = evolve(job, decided.value);
  };
  tell({
    kind: 'book in',
    number: 'J-5000',
    engineType: engineText,
    owner: 'Sedgeley Pumping Trust',
    plate: 'QF-0999',
    hoursRun: { text: '5200', unit: 'h' },
    complaint: 'measured again and again',
    currency: 'crowns',
    conformance: 0.95,
  });
  for (const instrument of instruments) tell({ kind: 'bring instrument', instrument });
  if (job.kind !== 'open') throw new Error('the job is not open');
  const cells = entryOrder(job.sheet.engine);
  const named = (kind: string | undefined): string =>
    instruments.find((one) => one.kind === kind)?.name ?? instruments[0]?.name ?? '';
  for (let count = 0; count < readings; count += 1) {
    const cell = cells[count % cells.length];
    if (!cell || job.kind !== 'open') continue;
    const kind = job.sheet.engine.characteristics.get(cell.characteristic)?.instrument;
    tell({
      kind: 'take reading',
      cell,
      typed: { text: sizeOf(job, cell.characteristic, count), unit: 'mm' },
      instrument: named(kind),
    });
  }
  return { id, events };
};
