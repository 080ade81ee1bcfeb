/** @module A one-pump job in the terminal: booked in to reach that pump, stripped, timed, run and handed over. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Story } from '../../demo/story.ts';
import type { Request } from '../../src/job/command.ts';
import type { Fact } from '../../src/job/event.ts';
import { factOf, requestKinds } from '../../src/job/read-command.ts';
import {
  bookedToReach,
  buildAndRun,
  partialText,
  planAndAgree,
  readAsWorn,
  strip,
  timePumps,
} from '../job/partial.ts';
import { bench } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const told = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, err }).toEqual({ words, code: 0, err: '' });
  return out;
};

interface Shown {
  readonly operations: readonly { readonly operation: string; readonly kind: string }[];
  readonly verdicts: readonly { readonly place: string }[];
}

const shown = async (): Promise<Shown> => JSON.parse(await told('show', 'J-4', '--json'));

/** The request that became a fact. */
const requestOf = (fact: Fact): Request => {
  const kind = requestKinds.find((one) => factOf({ kind: one } as Request).kind === fact.kind);
  return { ...fact, kind } as Request;
};

/** What a job that was told asks for from one event on, asked of the job in the terminal. */
const askAll = async (job: Story, from: number): Promise<void> => {
  const events = job.events().slice(from);
  // Each under the name that asked: a second person answers what a second person must see.
  for (let begun = 0; begun < events.length; ) {
    const by = events[begun]?.actor ?? '';
    const end = events.findIndex(({ actor }, index) => index > begun && actor !== by);
    const own = events.slice(begun, end < 0 ? events.length : end);
    writeFileSync(
      join(at.folder, 'asked.jsonl'),
      own.map(({ fact }) => JSON.stringify(requestOf(fact))).join('\n'),
    );
    await told('do', 'J-4', '--requests', 'asked.jsonl', '--by', by);
    begun += own.length;
  }
};

/** The same job as the terminal has it, told in memory: what it needs is asked of both. */
const same = bookedToReach(['pump.2'], 'J-4');

beforeAll(async () => {
  await told('demo');
  writeFileSync(join(at.folder, 'type.yaml'), partialText);
});

describe('one pump only, in the terminal', () => {
  it('is booked in to go no further', async () => {
    const booked = await told(
      'book-in',
      'type.yaml',
      'owner=Sedgeford Pumping Station',
      'plate=Q3-774',
      'hours=4200h',
      'complaint=misses on the second cylinder',
      'reach=pump.2',
    );
    expect(booked).toBe('Booked in as J-4.\nIt goes as far as this: fuel pump 2.\n');
    const text = await told('show', 'J-4');
    expect(text).toContain('Scope: fuel pump 2\n');
    expect(text).not.toContain('lift-head');
  });

  it('asks for a scope that can be reached', async () => {
    const { code, err } = await at.ask(['do', 'J-4', 'set-scope', 'reach=pmup.2', 'says=a slip']);
    expect(code).toBe(1);
    expect(err).toContain('write pump.2');
  });

  it('counts the time at what is done, and what interrupts it', async () => {
    await told('do', 'J-4', 'begin-work', 'operation=isolate-and-drain');
    await told('do', 'J-4', 'stop-work', 'operation=isolate-and-drain', 'why=coolant still hot');
    expect(await told('show', 'J-4')).toMatch(
      /Hours\n[\s\S]*isolate-and-drain .*Odo Ferrick +coolant still hot\nSpent 0 min.* left by the engine type: \d+ h \d\d min for \d+ operations/,
    );
  });

  it('is stripped, measured and decided for that pump', async () => {
    const before = same.events().length;
    strip(same);
    readAsWorn(same);
    await askAll(same, 2);
    expect(same.events().length).toBeGreaterThan(before);
    const { err } = await at.ask(['do', 'J-4', 'do-operation', 'operation=lift-head']);
    expect(err).toContain('this job does not go so far');
    expect((await shown()).verdicts.every(({ place }) => place === 'pump.2')).toBe(true);
    expect(await told('plan', 'J-4')).toMatch(/fuel pumps, fuel pump 2 +put back/);
    await told('choose', 'J-4');
    await told('do', 'J-4', 'note-agreement', 'name=H. Sedge', 'how=by telephone');
  });

  it('is timed, run and handed over, and its record says what was not opened', async () => {
    await planAndAgree(same);
    const before = same.events().length;
    timePumps(same);
    buildAndRun(same);
    await askAll(same, before);
    expect((await shown()).operations.filter(({ kind }) => kind !== 'done')).toEqual([]);
    await told('do', 'J-4', 'hand-over', 'to=H. Sedge');
    await told('record', 'J-4', '--to', 'record.html');
    expect(await told('verify', 'record.html')).toMatch(/^Verified: J-4/);
    expect(readFileSync(join(at.folder, 'record.html'), 'utf8')).toContain(
      'Nothing is said here of their state.',
    );
  });
});
