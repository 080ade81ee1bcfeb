/** @module The chain of hashes, held to RFC 8785 and FIPS 180-4: one changed digit in a journal shows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fact, JobEvent } from '../job/event.ts';
import { canonicalText, checkChain, hashOf, noHash, seal } from './chain.ts';

const textOf = (value: unknown): string => {
  const text = canonicalText(value);
  return text.kind === 'answer' ? text.value : `refused: ${text.refusal.what}`;
};

const double = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
};

/** A journal of notes, sealed one after the other. */
const journalOf = (notes: readonly string[]): JobEvent[] => {
  const events: JobEvent[] = [];
  for (const [index, note] of notes.entries()) {
    const sealed = seal<Fact>({
      id: `id-${index}`,
      job: 'job-1',
      sequence: index + 1,
      at: '2026-03-02T08:00:00Z',
      actor: 'Ilse Quarrow',
      bench: 'bench 2',
      version: 1,
      fact: { kind: 'operation done', operation: 'lift-off-head', note },
      before: events.at(-1)?.hash ?? noHash,
    });
    if (sealed.kind === 'refused') throw new Error(sealed.refusal.what);
    events.push(sealed.value);
  }
  return events;
};

describe('canonical JSON', () => {
  // source: RFC 8785, appendix B, table of IEEE 754 bits and their JSON text
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the number %s as %s', (bits, text) => {
    expect(textOf(double(bits))).toBe(text);
  });

  // source: RFC 8785, appendix B: NaN and Infinity are errors
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('refuses %s', (value) => {
    expect(canonicalText({ value }).kind).toBe('refused');
  });

  // source: RFC 8785, section 3.2.3
  it('sorts names by UTF-16 code units', () => {
    const sample =
      '{"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",' +
      '"\\ud83d\\ude00":"Emoji: Grinning Face","\\u0080":"Control","\\u00f6":"Latin Small Letter O With Diaeresis"}';
    const sorted = [...textOf(JSON.parse(sample)).matchAll(/:"([^"]+)"/g)].map((match) => match[1]);
    expect(sorted).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  // source: RFC 8785, sections 3.2.2 and 3.2.4
  it('writes the sample of the RFC as the RFC does', () => {
    const sample =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
      '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
    expect(textOf(JSON.parse(sample))).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  // source: RFC 8785, section 3.2.2.2: lone surrogates are an error
  it('refuses half a character, in a value and in a name', () => {
    expect(canonicalText({ note: 'scored \ud83d' }).kind).toBe('refused');
    expect(canonicalText({ '\udead': 1 }).kind).toBe('refused');
  });

  it('is the same before and after a journey as JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (value) => {
        expect(textOf(JSON.parse(JSON.stringify(value)))).toBe(textOf(value));
      }),
    );
  });
});

describe('the hash', () => {
  // source: FIPS 180-4 example computations, SHA-256 one block and two blocks (NIST, SHA256.pdf)
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of %s is the published one', (text, hash) => {
    expect(hashOf(text)).toBe(hash);
  });
});

describe('the chain', () => {
  const journal = journalOf(['clean', 'gasket torn', 'two bolts seized']);

  it('fits as it was written, and an empty one fits too', () => {
    expect(checkChain(journal).kind).toBe('answer');
    expect(checkChain([]).kind).toBe('answer');
  });

  const broken: readonly (readonly [string, (events: JobEvent[]) => unknown[], string])[] = [
    [
      'a changed word',
      ([a, b, c]) => [a, { ...b, fact: { ...b?.fact, note: 'gasket whole' } }, c],
      'event 2',
    ],
    ['a changed name', ([a, b, c]) => [a, b, { ...c, actor: 'Somebody Else' }], 'event 3'],
    ['an event left out', ([a, , c]) => [a, c], 'event 2'],
    ['the first event left out', ([, b, c]) => [b, c], 'event 1'],
    ['two events swapped', ([a, b, c]) => [b, a, c], 'event 1'],
    ['an event twice', ([a, b, c]) => [a, b, b, c], 'event 3'],
    ['another job among them', ([a, b, c]) => [a, { ...b, job: 'job-2' }, c], 'event 2'],
    ['an added member', ([a, b, c]) => [a, b, { ...c, extra: true }], 'event 3'],
  ];
  it.each(broken)('names the event where %s breaks it', (_, change, where) => {
    const checked = checkChain(change(journalOf(['clean', 'gasket torn', 'two bolts seized'])) as JobEvent[]);
    expect(checked).toMatchObject({ kind: 'refused', refusal: { where } });
  });

  it('shows a changed event even where its own hash was made to fit: the next one no longer follows', () => {
    const [first, second, third] = journalOf(['clean', 'gasket torn', 'two bolts seized']);
    if (!first || !second || !third) throw new Error('three events were made');
    const { hash: _, ...rest } = second;
    const forged = seal({ ...rest, actor: 'Somebody Else' });
    if (forged.kind === 'refused') throw new Error('it can be sealed');
    expect(checkChain([first, forged.value, third])).toMatchObject({ refusal: { where: 'event 3' } });
  });

  it('shows any one changed digit of a note', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^\d{1,12}$/),
        fc.nat(),
        fc.integer({ min: 1, max: 9 }),
        (note, at, step) => {
          const events = journalOf(['before', note, 'after']);
          const index = at % note.length;
          const digit = (Number(note[index]) + step) % 10;
          const changed = `${note.slice(0, index)}${digit}${note.slice(index + 1)}`;
          const forged = events.map((event, place) =>
            place === 1 ? { ...event, fact: { ...event.fact, note: changed } as JobEvent['fact'] } : event,
          );
          expect(checkChain(forged)).toMatchObject({ refusal: { where: 'event 2' } });
        },
      ),
    );
  });
});
