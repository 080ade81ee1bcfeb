/** @module Every kind of entry of the register, in every version ever written, still reads. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { checkChain } from '../../src/journal/chain.ts';
import type { RegisterEvent, RegisterFact } from '../../src/register/event.ts';
import { registerFacts, type ShapedRegisterFact } from '../../src/register/fact-shape.ts';
import { readRegisterEvent, readRegisterEvents } from '../../src/register/read.ts';

const folder = new URL('./register-samples/', import.meta.url);
/** Named by sequence, kind and version. */
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const samples = files.map((name) => ({
  name,
  json: JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as RegisterEvent,
}));

type Deep<Value> = Value extends readonly (infer Item)[]
  ? readonly Deep<Item>[]
  : Value extends object
    ? { readonly [Key in keyof Value]: Deep<Value[Key]> }
    : Value;

describe('stored entries of the register', () => {
  it('have a sample of every kind in every version', () => {
    const wanted = registerFacts.kinds.flatMap((kind) =>
      Array.from(
        { length: registerFacts.versionNow(kind) },
        (_, index) => `${kind.replaceAll(' ', '-')}.${index + 1}.json`,
      ),
    );
    const there = new Set(files.map((name) => name.replace(/^\d+\./, '')));
    expect([...there].toSorted()).toEqual(wanted.toSorted());
  });

  it.each(samples)('$name still reads, with every word and figure in it', ({ json }) => {
    const event = readRegisterEvent(json);
    expect(event).toEqual({ kind: 'answer', value: json });
  });

  it('still fit their chain', () => {
    const journal = samples.map(({ json }) => json).sort((a, b) => a.sequence - b.sequence);
    expect(checkChain(journal).kind).toBe('answer');
    expect(readRegisterEvents(journal).kind).toBe('answer');
  });

  it('have shapes that say what the types say', () => {
    expectTypeOf<Deep<ShapedRegisterFact>>().toEqualTypeOf<Deep<RegisterFact>>();
  });

  it('of a kind to come are refused, and the remedy is a newer program', () => {
    const [first] = samples;
    const strange = { ...first?.json, fact: { kind: 'instrument sold', name: 'x' } };
    expect(readRegisterEvent(strange)).toMatchObject({ refusal: { remedy: 'use a newer Endfloat' } });
  });
});
