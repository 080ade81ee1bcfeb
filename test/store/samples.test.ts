/** @module Events as they were written once: they must be read for ever. A sample that has been committed is never changed. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { Fact } from '../../src/job/event.ts';
import { facts, type ShapedFact } from '../../src/job/fact-shape.ts';
import { readEvent, readEvents } from '../../src/job/upcast.ts';
import { type Chained, checkChain } from '../../src/journal/chain.ts';

const folder = new URL('./samples/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const samples = files.map((name) => ({ name, json: JSON.parse(textOf(name)) as Chained & { fact: Fact } }));

type Deep<Value> = Value extends readonly (infer Item)[]
  ? readonly Deep<Item>[]
  : Value extends object
    ? { readonly [Key in keyof Value]: Deep<Value[Key]> }
    : Value;

describe('stored events', () => {
  it('have a sample of every kind in every version', () => {
    const wanted = facts.kinds.flatMap((kind) =>
      Array.from(
        { length: facts.versionNow(kind) },
        (_, index) => `${kind.replaceAll(' ', '-')}.${index + 1}.json`,
      ),
    );
    expect(files.toSorted()).toEqual(wanted.toSorted());
  });

  it.each(samples)('$name still reads, with every word and figure in it', ({ name, json }) => {
    const event = readEvent(json);
    expect(event.kind === 'refused' ? event.refusal : 'read').toBe('read');
    if (event.kind === 'answer' && name.endsWith(`.${facts.versionNow(event.value.fact.kind)}.json`))
      expect(event.value).toEqual(json);
  });

  it('still fit their chain', () => {
    const journal = samples.map(({ json }) => json).sort((a, b) => a.sequence - b.sequence);
    expect(checkChain(journal).kind).toBe('answer');
  });

  it('have shapes that say what the types say', () => {
    expectTypeOf<Deep<ShapedFact>>().toEqualTypeOf<Deep<Fact>>();
  });
});

const anEvent = () =>
  JSON.parse(textOf('operation-done.1.json')) as Record<string, unknown> & { fact: object };

describe('what is no event', () => {
  it.each([
    ['a text', 'event'],
    ['nothing', null],
    ['an event without a hash', { ...anEvent(), hash: undefined }],
    ['an event with a half hash', { ...anEvent(), hash: 'ab12' }],
    ['an event numbered 0', { ...anEvent(), sequence: 0 }],
    ['an event numbered one and a half', { ...anEvent(), sequence: 1.5 }],
    ['an event at no time', { ...anEvent(), at: 'yesterday' }],
    ['an event with more in it than events have', { ...anEvent(), extra: 1 }],
    ['a fact with more in it than its kind has', { ...anEvent(), fact: { ...anEvent().fact, extra: 1 } }],
    ['a fact with less', { ...anEvent(), fact: { kind: 'operation done', operation: 'x' } }],
    ['a note of half a character', { ...anEvent(), fact: { ...anEvent().fact, note: '\ud83d' } }],
    ['a note with a bell in it', { ...anEvent(), fact: { ...anEvent().fact, note: '\u0007' } }],
    ['an id that would not do in an address', { ...anEvent(), id: '../etc' }],
  ])('%s is refused', (_, json) => {
    const read = readEvent(json);
    expect(read.kind).toBe('refused');
    if (read.kind === 'refused') expect(read.refusal.remedy).not.toBe('');
  });

  it('of a kind or a version to come is refused, and the remedy is a newer program', () => {
    const kind = readEvent({ ...anEvent(), fact: { ...anEvent().fact, kind: 'engine launched' } });
    expect(kind).toMatchObject({
      refusal: {
        what: expect.stringContaining('“engine launched”'),
        where: 'event 12',
        remedy: 'use a newer Endfloat',
      },
    });
    const version = readEvent({ ...anEvent(), version: facts.versionNow('operation done') + 1 });
    expect(version).toMatchObject({
      refusal: {
        what: expect.stringContaining(`versions up to ${facts.versionNow('operation done')}`),
        remedy: 'use a newer Endfloat',
      },
    });
    for (const name of ['constructor', '__proto__', 'toString'])
      expect(readEvent({ ...anEvent(), fact: { ...anEvent().fact, kind: name } }).kind).toBe('refused');
  });

  it('in a journal names the event', () => {
    expect(readEvents([anEvent(), { ...anEvent(), version: 9 }])).toMatchObject({
      refusal: { where: 'event 12' },
    });
    expect(readEvents({ 0: anEvent() }).kind).toBe('refused');
  });
});
