/** @module A record verifies as it was written, and no longer when one digit of it has been changed. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { decided } from '../../demo/jobs/finished.ts';
import { story } from '../../demo/story.ts';
import { measured, plan } from '../../test/job/bench.ts';
import { groundBack } from '../../test/job/ordering.ts';
import { asked, readyToLay } from '../../test/job/summing.ts';
import type { Fact, JobEvent } from '../job/event.ts';
import { replay } from '../job/evolve.ts';
import { seal } from '../journal/chain.ts';
import { highsSolver } from '../solver/highs.ts';
import { fileOf, pageOf } from './record.ts';
import { verifyRecord } from './verify.ts';

const engineType = readFileSync(new URL('../../demo/engines/quillfeather-3w.yaml', import.meta.url), 'utf8');

const told = (owner = 'Gullwick Sluice Company') => {
  const job = story(90, '2026-10-05T08:00:00Z');
  job.tell('Perpetua Sallow', 0, {
    kind: 'book in',
    number: 'J-90',
    engineType,
    owner,
    plate: 'QF-0417',
    hoursRun: { text: '7400', unit: 'h' },
    complaint: 'low oil pressure when hot',
    currency: 'crowns',
    conformance: 0.95,
  });
  for (const instrument of instruments) job.tell('Odo Ferrick', 1, { kind: 'bring instrument', instrument });
  const read = (
    place: string,
    characteristic: string,
    plane: string,
    axis: string,
    text: string,
    instrument: string,
  ) =>
    job.tell('Odo Ferrick', 2, {
      kind: 'take reading',
      cell: { place, characteristic, plane, axis },
      typed: { text, unit: 'mm' },
      instrument,
    });
  for (const plane of ['front', 'rear'])
    for (const axis of ['vertical', 'horizontal'])
      read(
        'main.1',
        'main-journal-diameter',
        plane,
        axis,
        axis === 'vertical' ? '54.961' : '54.967',
        'mic-50-75',
      );
  read('pump.1', 'pump-depth', '', '', '82.34', 'depth-0-100');
  read('pump.1', 'pump-pack-found', '', '', '0.65', 'mic-0-25');
  return job;
};

const job = told();
const page = pageOf(job.job(), job.events());
const file = fileOf(job.job(), job.events());

/** The text with the digit at a position turned into another one. */
const changed = (text: string, at: number, by: number): string => {
  const digit = Number(text[at]);
  return `${text.slice(0, at)}${(digit + by) % 10}${text.slice(at + 1)}`;
};

const digitsIn = (text: string): readonly number[] => [...text.matchAll(/\d/g)].map((match) => match.index);

const anyDigitOf = (text: string) =>
  fc.tuple(fc.constantFrom(...digitsIn(text)), fc.integer({ min: 1, max: 9 }));

describe('a record', () => {
  it('verifies as it was written, as a page and as a file', () => {
    expect(verifyRecord(page)).toMatchObject({ kind: 'verified', events: job.events() });
    expect(verifyRecord(file)).toMatchObject({ kind: 'verified', events: job.events() });
  });

  it('verifies after a mailer has changed its line ends', () => {
    expect(verifyRecord(page.replaceAll('\n', '\r\n')).kind).toBe('verified');
    expect(verifyRecord(`\ufeff${file}`).kind).toBe('verified');
  });

  it('does not verify with one digit of the page changed, wherever it stands', () => {
    fc.assert(
      fc.property(anyDigitOf(page), ([at, by]) => {
        expect(verifyRecord(changed(page, at, by)).kind).toBe('not verified');
      }),
      { numRuns: 60 },
    );
  });

  it('does not verify with one digit of the file changed, wherever it stands', () => {
    fc.assert(
      fc.property(anyDigitOf(file), ([at, by]) => {
        expect(verifyRecord(changed(file, at, by)).kind).toBe('not verified');
      }),
      { numRuns: 60 },
    );
  });

  it('names the figure that differs, with what is shown and what the journal gives', () => {
    const verified = verifyRecord(file.replace('"0.660 mm"', '"0.960 mm"'));
    expect(verified).toMatchObject({
      kind: 'not verified',
      refusal: {
        what: 'the record shows 0.960 mm, the journal gives 0.660 mm',
        where: 'shim packs / pump.1 / Needed',
      },
    });
  });

  it('names the event that was changed', () => {
    const events = job.events();
    const at = events.findIndex((event) => event.fact.kind === 'reading taken');
    const verified = verifyRecord(file.replace('"text": "54.961"', '"text": "54.971"'));
    expect(verified).toMatchObject({ kind: 'not verified', refusal: { where: `event ${at + 1}` } });
  });

  /** The whole chain made anew round one fact that was changed. */
  const forge = (events: readonly JobEvent[], change: (fact: Fact) => Fact): string => {
    const forged: JobEvent[] = [];
    for (const event of events) {
      const { hash: _, ...rest } = event;
      const sealed = seal({ ...rest, fact: change(event.fact), before: forged.at(-1)?.hash ?? event.before });
      if (sealed.kind === 'refused') throw new Error('the forger cannot seal');
      forged.push(sealed.value);
    }
    const shown = replay(forged);
    if (shown.kind !== 'open') throw new Error('the forgery does not open');
    return fileOf(shown, forged);
  };

  const cheaper = <Of extends { readonly cents: number }>(one: Of): Of => ({
    ...one,
    cents: one.cents - 100,
  });

  it('does not verify with a plan that its readings do not give, though the forger makes the whole chain anew', () => {
    const bench = measured();
    bench.done(plan);
    expect(verifyRecord(forge(bench.events, (fact) => fact)).kind).toBe('verified');
    const file = forge(bench.events, (fact) => (fact.kind === 'plan chosen' ? cheaper(fact) : fact));
    expect(verifyRecord(file)).toMatchObject({
      kind: 'not verified',
      refusal: {
        what: expect.stringContaining('the plan is not one') as string,
        where: `event ${bench.events.length}`,
      },
    });
  });

  it('does not verify with a sum that does not come of its figures, or not of the engine’s own', () => {
    const bench = readyToLay();
    bench.done(asked(bench, '50.030 ± 0.004 mm'));
    expect(verifyRecord(forge(bench.events, (fact) => fact)).kind).toBe('verified');
    const forged = (change: (text: string) => string) =>
      verifyRecord(
        forge(bench.events, (fact) =>
          fact.kind === 'sum noted'
            ? {
                ...fact,
                inputs: fact.inputs.map((input) => ({ ...input, text: change(input.text) })),
                found: fact.found.map((result) => ({ ...result, text: change(result.text) })),
              }
            : fact,
        ),
      );
    for (const [from, to] of [
      ['0.0550', '0.0450'],
      ['49.975', '49.985'],
    ] as const)
      expect(forged((text) => text.replace(from, to))).toMatchObject({
        kind: 'not verified',
        refusal: {
          what: expect.stringContaining('this sum does not come of what its readings give') as string,
          where: `event ${bench.events.length}`,
        },
      });
  });

  it('does not verify with an offer or an acceptance that there could not be', async () => {
    const events = (await decided(await highsSolver())).events();
    const at = (kind: Fact['kind']) => `event ${events.findIndex(({ fact }) => fact.kind === kind) + 1}`;
    expect(verifyRecord(forge(events, (fact) => fact)).kind).toBe('verified');
    const offered = forge(events, (fact) =>
      fact.kind === 'offer made' ? { ...fact, plans: fact.plans.map(cheaper) } : fact,
    );
    expect(verifyRecord(offered)).toMatchObject({
      refusal: {
        what: expect.stringContaining('the offer is not one') as string,
        where: at('offer made'),
      },
    });
    const over = forge(events, (fact) =>
      fact.kind === 'offer made' ? { ...fact, validUntil: '2026-09-07' } : fact,
    );
    expect(verifyRecord(over)).toMatchObject({
      refusal: {
        what: 'the owner could not agree to it: it was valid until 2026-09-07',
        where: at('owner agreed'),
      },
    });
  });

  it('does not verify with an order that the plan does not give, nor with more come than was ordered', () => {
    const { events } = groundBack();
    const at = (kind: Fact['kind']) => `event ${events.findIndex(({ fact }) => fact.kind === kind) + 1}`;
    expect(verifyRecord(forge(events, (fact) => fact)).kind).toBe('verified');
    const less = forge(events, (fact) =>
      fact.kind === 'order placed' ? { ...fact, lines: fact.lines.map(cheaper) } : fact,
    );
    expect(verifyRecord(less)).toMatchObject({
      refusal: {
        what: 'the order is not one that the agreed plan gives: it has another price',
        where: at('order placed'),
      },
    });
    const more = forge(events, (fact) =>
      fact.kind === 'delivery received'
        ? { ...fact, lines: fact.lines.map((line) => ({ ...line, count: line.count + 1 })) }
        : fact,
    );
    expect(verifyRecord(more)).toMatchObject({
      refusal: {
        what: expect.stringContaining('this could not be received: 2 came') as string,
        where: at('delivery received'),
      },
    });
  });

  it('does not verify with its last event cut off', () => {
    const held = JSON.parse(file) as { journal: unknown[] };
    held.journal.pop();
    expect(verifyRecord(JSON.stringify(held)).kind).toBe('not verified');
  });

  it('does not verify with a figure added or taken away', () => {
    const held = JSON.parse(file) as { figures: Record<string, string> };
    expect(verifyRecord(JSON.stringify({ ...held, figures: { ...held.figures, more: '1' } }))).toMatchObject({
      refusal: { where: 'more' },
    });
    const { 'last hash': _, ...fewer } = held.figures;
    expect(verifyRecord(JSON.stringify({ ...held, figures: fewer }))).toMatchObject({
      refusal: { where: 'last hash' },
    });
  });

  it.each([
    '',
    '{',
    '[]',
    'null',
    '<html></html>',
    '{"format":"endfloat record 2","journal":[],"figures":{}}',
    '\0\0',
  ])('that is none does not verify and is not stumbled over: %j', (text) => {
    expect(verifyRecord(text).kind).toBe('not verified');
  });

  it.each(['</script><script>alert(1)</script>', '<!-- ', "' onload='x", '\u202eevil', '&lt;', '𝄞 ½ 水'])(
    'keeps a hostile name as words, and verifies: %j',
    (owner) => {
      const hostile = told(owner);
      const text = pageOf(hostile.job(), hostile.events());
      expect(text.match(/<script/g)).toHaveLength(1);
      expect(text.match(/<!--/g)).toBeNull();
      expect(verifyRecord(text).kind).toBe('verified');
    },
  );
});
