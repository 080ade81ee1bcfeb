/** @module What stands on a record: as found and as built apart, deviations at the front, nothing hidden. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { decided, finished } from '../../demo/jobs/finished.ts';
import { type Story, story } from '../../demo/story.ts';
import { highsSolver } from '../solver/highs.ts';
import { recordOf } from './record.ts';

const engineType = readFileSync(new URL('../../demo/engines/mudlark-1.yaml', import.meta.url), 'utf8');

const begun = (): Story => {
  const job = story(91, '2026-09-07T08:00:00Z');
  job.tell('Perpetua Sallow', 0, {
    kind: 'book in',
    number: 'J-91',
    engineType,
    shop: 'Saltmarsh Bench & Bore',
    owner: 'Orrell & Daughter',
    plate: 'M1-2086',
    hoursRun: { text: '3900', unit: 'h' },
    complaint: 'knocks',
    currency: 'crowns',
    conformance: 0.95,
  });
  for (const instrument of instruments) job.tell('Odo Ferrick', 1, { kind: 'bring instrument', instrument });
  return job;
};

const read = (job: Story, axis: string, text: string, unit = 'mm'): void => {
  const cell = { place: 'big-end.1', characteristic: 'big-end-journal-diameter', plane: 'front', axis };
  job.tell('Odo Ferrick', 2, { kind: 'take reading', cell, typed: { text, unit }, instrument: 'mic-25-50' });
};

const sectionOf = (job: Story, name: string) => {
  const section = recordOf(job.job(), job.events()).sections.find((one) => one.name === name);
  if (!section) throw new Error(`no section ${name}`);
  return section;
};

const textOf = (job: Story, name: string): string => {
  const { says, table } = sectionOf(job, name);
  return [...says, ...(table?.rows ?? []).map((row) => row.cells.join(' | '))].join('\n');
};

describe('a record', () => {
  it('shows whose engine it is, which, and in what state it came', () => {
    const heading = recordOf(begun().job(), begun().events()).heading.map(
      ({ name, says }) => `${name}: ${says}`,
    );
    expect(heading).toEqual(
      expect.arrayContaining([
        'Shop: Saltmarsh Bench & Bore',
        'Owner: Orrell & Daughter',
        'Plate: M1-2086',
        'Hours run: 3900 h',
        'Handed over: not yet: this record is of an unfinished job',
      ]),
    );
  });

  it('quotes a reading as it was typed, with who, when and with what', () => {
    const job = begun();
    read(job, 'vertical', '1.5734', 'in');
    expect(textOf(job, 'readings')).toContain('1.5734 in | mic-25-50 | 20 °C taken | 2026-09-07 08:');
    expect(textOf(job, 'readings')).toContain('Odo Ferrick | counts');
  });

  it('keeps a reading struck out in sight, with the reason', () => {
    const job = begun();
    read(job, 'vertical', '40.466');
    const id = job.events().at(-1)?.id ?? '';
    job.tell('Odo Ferrick', 1, { kind: 'strike out reading', reading: id, why: 'thimble one turn out' });
    read(job, 'vertical', '39.966');
    const text = textOf(job, 'readings');
    expect(text).toMatch(/40\.466 mm .* struck out by Odo Ferrick, .*: thimble one turn out/);
    expect(text).toMatch(/39\.966 mm .* counts/);
  });

  it('keeps what was found apart from what was built', async () => {
    const job = await finished(await highsSolver());
    // source: the readings of the demo less the zero of 0.001 mm that the register gives for this bore gauge
    expect(textOf(job, 'verdicts as found')).toMatch(
      /barrel bore \| 78\.000 mm to 78\.020 mm \| at most 78\.140 mm \| 78\.157 mm .* outside/,
    );
    expect(textOf(job, 'verdicts as built')).toMatch(
      /barrel bore \| 78\.500 mm to 78\.520 mm \| at most 78\.640 mm \| 78\.5\d\d mm .* within, as new/,
    );
    expect(textOf(job, 'verdicts as built')).not.toContain('78.157');
    // Nothing is left open; the weep at the first running is told, with what was done about it.
    expect(textOf(job, 'deviations')).toMatch(/^1 to be known\.\n[^\n]*weeps[^\n]*$/);
  });

  it('names at the front what turned out poor after the plan, and what was not measured again', async () => {
    const job = await decided(await highsSolver());
    const cell = {
      place: 'main.1',
      characteristic: 'main-journal-diameter',
      plane: 'front',
      axis: 'vertical',
    };
    const typed = { text: '41.930', unit: 'mm' };
    job.tell('Odo Ferrick', 2, { kind: 'take reading', cell, typed, instrument: 'mic-25-50' });
    expect(textOf(job, 'deviations')).toContain(
      'main bearing 1, main journal diameter | outside when measured again',
    );
    expect(textOf(job, 'deviations')).toContain(
      'cylinder barrel | machined or renewed by the plan and not measured again: cylinder barrel, barrel bore;',
    );
    expect(textOf(job, 'deviations')).toContain('fuel pump | no shim pack is noted as fitted');
    expect(recordOf(job.job(), job.events()).sections[0]?.name).toBe('deviations');
  });

  it('says what was decided for each component and why, what it costs, and who agreed', async () => {
    const text = textOf(await decided(await highsSolver()), 'plan');
    expect(text).toMatch(
      /^Chosen by Tamsin Orrell, .* crowns in all, ready in \d+ days, good for \d+ hours more\.$/m,
    );
    expect(text).toMatch(/^Agreed by Tamsin Orrell, at the link of the offer, to plan A of offer 1/m);
    expect(text).toMatch(
      /^cylinder barrel \| machine to 0\.50, by Pellow's Boring Mill: cleans up .* \| 78\.00 crowns$/m,
    );
  });

  it('names an instrument that was read with and whose zero was never checked', () => {
    const job = begun();
    const [mic] = instruments.filter(({ name }) => name === 'mic-25-50');
    if (!mic) throw new Error('no micrometer');
    const { zero: _, ...unchecked } = mic;
    job.tell('Odo Ferrick', 1, { kind: 'bring instrument', instrument: unchecked });
    read(job, 'vertical', '39.966');
    expect(textOf(job, 'deviations')).toContain('mic-25-50 | read with, its zero never checked');
    expect(textOf(job, 'instruments')).toMatch(/mic-25-50 .* never checked/);
  });

  it('tells the pack needed, found and chosen with the error in millimetres and degrees', () => {
    const job = begun();
    const at = (characteristic: string, text: string, instrument: string) =>
      job.tell('Odo Ferrick', 2, {
        kind: 'take reading',
        cell: { place: 'pump.1', characteristic, plane: '', axis: '' },
        typed: { text, unit: 'mm' },
        instrument,
      });
    at('pump-depth', '61.93', 'depth-0-100');
    at('pump-pack-found', '0.50', 'mic-0-25');
    const counts = [{ thickness: { text: '0.30', unit: 'mm' }, count: 2 }];
    job.tell('Odo Ferrick', 2, { kind: 'count shims', shims: counts });
    // source: hand arithmetic from the engine type: needed 61.93 - 61.36 = 0.57; found 0.50 is 0.07 thin, and adding
    // shims advances by 12.23 deg/mm, so 0.856 deg late; 0.30 + 0.30 is 0.03 thick, 0.367 deg early
    expect(textOf(job, 'shim packs')).toContain(
      '61.930 mm | 0.570 mm | 0.500 mm: -0.070 mm, 0.86° late | 0.300 + 0.300 = 0.600 mm: +0.030 mm, 0.37° early | not fitted',
    );
  });

  it('says what overrules it', () => {
    expect(recordOf(begun().job(), begun().events()).safety[0]).toMatch(
      /manual, local codes and licensed practice overrule/,
    );
  });
});
