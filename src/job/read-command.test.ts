/** @module Commands from outside: their shape. */
import { describe, expect, it } from 'vitest';
import { booking } from '../../test/job/bench.ts';
import { facts } from './fact-shape.ts';
import { factOf, readCommand, readRequest, requestKinds } from './read-command.ts';

const command = {
  id: '0195a1b2-0000-7000-8000-000000000001',
  job: '0195a1b2-0000-7000-8000-0000000000ff',
  at: '2026-03-02T08:00:00.000Z',
  actor: 'Ilse Quarrow',
  bench: 'bench 2',
  request: booking,
};

describe('a command from outside', () => {
  it('is read as it was sent', () => {
    expect(readCommand(JSON.parse(JSON.stringify(command)))).toEqual({ kind: 'answer', value: command });
  });

  it.each([
    ['nothing', null],
    ['a list', []],
    ['no id', { ...command, id: undefined }],
    ['an id that would not do in an address', { ...command, id: 'a b' }],
    ['a job of 65 letters', { ...command, job: 'a'.repeat(65) }],
    ['no time', { ...command, at: '02.03.2026' }],
    ['a time elsewhere than in UTC', { ...command, at: '2026-03-02T08:00:00+01:00' }],
    ['no request', { ...command, request: 'book in' }],
    ['more than a command has', { ...command, sequence: 4 }],
    ['a request of less than it needs', { ...command, request: { kind: 'hand over' } }],
    ['a request of more', { ...command, request: { ...booking, hash: '' } }],
  ])('with %s is refused, with a remedy', (_, json) => {
    const read = readCommand(json);
    expect(read.kind).toBe('refused');
    if (read.kind === 'refused') expect(read.refusal.remedy).not.toBe('');
  });

  it('that nobody knows is refused with those that are known', () => {
    const read = readRequest({ kind: 'reopen' });
    expect(read).toMatchObject({ refusal: { remedy: expect.stringContaining('take reading') } });
  });

  it('takes a plan whose parts cost more than ten thousand', () => {
    const crank = {
      slot: 'crankshaft',
      option: 'crankshaft:replace',
      says: 'a new crankshaft',
      cents: 1_850_000,
    };
    const plan = { kind: 'choose plan', choices: [crank], cents: 1_850_000, days: 14, hours: 8000 };
    expect(readRequest(plan)).toMatchObject({ value: { choices: [crank] } });
  });

  it('has one kind of fact for each kind of request', () => {
    const kinds = requestKinds.map((kind) => factOf({ ...booking, kind } as never).kind);
    expect(new Set(kinds).size).toBe(requestKinds.length);
    expect(new Set(kinds)).toEqual(new Set(facts.kinds));
  });
});
