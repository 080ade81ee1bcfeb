/** @module Values typed behind keys become requests, or it is said which key is wrong and how it is written. */
import { describe, expect, it } from 'vitest';
import { readRequest } from '../../job/read-command.ts';
import { jobRequests } from './job-request.ts';
import { readValues } from './read-values.ts';
import { readRequests } from './request-file.ts';

const read = (name: string, ...words: readonly string[]) => {
  const request = jobRequests.find((one) => one.name === name);
  if (!request || 'ask' in request) throw new Error(`no request ${name} of keys alone`);
  const values = readValues(words, request.keys, name);
  if (values.kind === 'refused') return values;
  // None of those asked here looks at the job.
  return readRequest({ kind: request.kind, ...request.body(values.value, undefined as never) });
};

describe('a request typed by keys', () => {
  it('keeps figures as they were typed', () => {
    expect(
      read(
        'take-reading',
        'place=main.1',
        'characteristic=x',
        'reading=54,961 mm',
        'instrument=mic',
        'temperature=21degC',
      ),
    ).toEqual({
      kind: 'answer',
      value: {
        kind: 'take reading',
        cell: { place: 'main.1', characteristic: 'x', plane: '', axis: '' },
        typed: { text: '54,961', unit: 'mm' },
        instrument: 'mic',
        temperature: { text: '21', unit: '°C' },
      },
    });
  });

  it.each([
    ['shims=0.20mm x 6, 0.25mm x 4', ['0.20 6', '0.25 4']],
    ['shims=0.20mmx6,0.25mmx4', ['0.20 6', '0.25 4']],
    ['shims=0,20mm x 6; 0,25mm × 4', ['0,20 6', '0,25 4']],
    ['shims=0,20mm x 6, 0,25mm * 4', ['0,20 6', '0,25 4']],
    ['shims=8thou x 2', ['8 2']],
    ['shims=', []],
  ])('counts the box: %s', (word, counts) => {
    const request = read('count-shims', word);
    expect(request.kind).toBe('answer');
    if (request.kind === 'answer' && request.value.kind === 'count shims')
      expect(request.value.shims.map(({ thickness, count }) => `${thickness.text} ${count}`)).toEqual(counts);
  });

  it('takes a load as a share or as a torque', () => {
    for (const load of ['50%', '40N·m'])
      expect(read('log-run-step', 'speed=1500rpm', `load=${load}`, 'minutes=20')).toMatchObject({
        kind: 'answer',
      });
    expect(read('log-run-step', 'speed=1500rpm', 'load=40kg', 'minutes=20')).toMatchObject({
      kind: 'refused',
    });
  });

  it.each([
    ['fit-pack', ['place=pump.1'], /shims missing/],
    ['fit-pack', ['place=pump.1', 'shims=0.30 + 0.25mm'], /unit is missing/],
    ['count-shims', ['shims=0.20mm'], /not a thickness and a count/],
    ['count-shims', ['shims=0.20mm x many'], /not a thickness and a count/],
    [
      'note-finding',
      ['place=a', 'component=b', 'finding=scored', 'may-go-back=perhaps'],
      /neither yes nor no/,
    ],
    ['note-finding', ['place=a', 'component=b', 'finding=sad', 'may-go-back=no'], /finding/],
    ['log-run-step', ['speed=1500rpm', 'load=50%', 'minutes=-3'], /not a number/],
    ['hand-over', ['to=A', '__proto__=x'], /no key __proto__/],
  ] as const)('is refused: %s %j', (name, words, told) => {
    const request = read(name, ...words);
    expect(request.kind).toBe('refused');
    if (request.kind === 'refused') expect(JSON.stringify(request.refusal)).toMatch(told);
  });
});

describe('a file of requests', () => {
  const done = { kind: 'do operation', operation: 'lift-head', note: '' };

  it('is a list, or one request a line', () => {
    expect(readRequests(JSON.stringify([done, done]))).toEqual({ kind: 'answer', value: [done, done] });
    expect(readRequests(`${JSON.stringify(done)}\n\n${JSON.stringify(done)}\n`)).toEqual({
      kind: 'answer',
      value: [done, done],
    });
  });

  it.each([
    ['{', 'line 1'],
    [`${JSON.stringify(done)}\nnonsense`, 'line 2'],
    ['[1', 'file'],
    ['[{"kind":"do operation"}]', 'request 1'],
    ['[{"kind":"sing"}]', 'request 1'],
  ])('is refused with where it is wrong: %s', (text, where) => {
    const read = readRequests(text);
    expect(read.kind).toBe('refused');
    if (read.kind === 'refused') expect(read.refusal.where).toContain(where);
  });
});
