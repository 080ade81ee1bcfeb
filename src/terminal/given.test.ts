/** @module What is typed behind a command is sorted out, or refused with what to write instead. */
import { describe, expect, it } from 'vitest';
import { answer } from '../quantity/refusal.ts';
import type { TerminalCommand } from './command.ts';
import { keyValues, sortOut } from './given.ts';
import type { World } from './world.ts';

const world: World = {
  folder: '/',
  env: {},
  out: () => undefined,
  err: () => undefined,
  watched: false,
  standardInput: async () => new Uint8Array(),
  now: () => '2026-10-05T08:00:00.000Z',
  newId: () => 'id',
  newToken: () => 'token',
  user: () => 'somebody',
  stopped: async () => undefined,
};

const command: TerminalCommand = {
  name: 'plan',
  summary: '',
  usage: ['plan ENGINE-FILE'],
  options: [
    { name: 'days', value: 'N', says: '' },
    { name: 'fix', value: 'SLOT=OPTION', many: true, says: '' },
  ],
  words: [1, 2],
  run: async () => answer({ text: '', json: {} }),
};

const sorted = (...typed: readonly string[]) => sortOut(command, typed, world);

describe('what is typed behind a command', () => {
  it('is sorted into words, switches and values', () => {
    const given = sorted('a.yaml', '--days', '12', '--json', '--fix=x=y', '--fix', 'z=w');
    expect(given).toMatchObject({ kind: 'answer', value: { words: ['a.yaml'] } });
    if (given.kind === 'answer') {
      expect([...given.value.switches]).toEqual(['json']);
      expect(given.value.values.get('days')).toEqual(['12']);
      expect(given.value.values.get('fix')).toEqual(['x=y', 'z=w']);
    }
  });

  it.each([
    [['a.yaml', '--dasy', '3'], 'there is no option --dasy', /did you mean days\?/],
    [['a.yaml', '-q'], 'there is no option -q', /the options are/],
    [['a.yaml', '--days'], '--days wants a value', /--days N/],
    [['a.yaml', '--days', '--json'], '--days wants a value', /--days N/],
    [['a.yaml', '--days='], '--days wants a value', /--days N/],
    [['a.yaml', '--json=yes'], '--json takes no value', /--json alone/],
    [['a.yaml', '--days', '3', '--days', '4'], '--days is given twice', /once/],
    [[], 'something is missing', /plan ENGINE-FILE/],
    [['a', 'b', 'c'], 'too much is given: c', /plan ENGINE-FILE/],
  ] as const)('is refused: %j', (typed, what, remedy) => {
    const given = sorted(...typed);
    expect(given).toMatchObject({ kind: 'refused', refusal: { what, where: 'endfloat plan' } });
    if (given.kind === 'refused') expect(given.refusal.remedy).toMatch(remedy);
  });

  it('asks for nothing more where help is wanted', () => {
    expect(sorted('--help')).toMatchObject({ kind: 'answer' });
    expect(sorted('-h')).toMatchObject({ kind: 'answer' });
  });
});

describe('key=value', () => {
  it('keeps further equals signs in the value, and an empty value', () => {
    const pairs = keyValues(['a=b=c', 'd='], 'here');
    expect(pairs.kind === 'answer' && [...pairs.value]).toEqual([
      ['a', 'b=c'],
      ['d', ''],
    ]);
  });

  it.each([[['a']], [['=b']], [['']], [['a=1', 'a=2']]])('is refused: %j', (words) => {
    expect(keyValues(words, 'here')).toMatchObject({ kind: 'refused' });
  });
});
