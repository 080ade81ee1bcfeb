/** @module Laws of the register's journal. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRegisterFact, inJournal } from '../../test/register/any-register.ts';
import { Shop } from '../../test/register/shop.ts';
import { checkChain, noHash } from '../journal/chain.ts';
import type { RegisterEvent } from './event.ts';
import { emptyRegister, evolveRegister, replayRegister } from './evolve.ts';
import { readRegisterEvent } from './read.ts';
import { inUse } from './register.ts';
import { standing } from './standing.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

describe("the register's journal", () => {
  it('fits its chain, and reads again word for word', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { showed: mm('0.001') });
    shop.calibrate('2026-03-03', { on: '2026-03-01', due: '2026-09-01', uncertainty: mm('0.001') });
    const stored = JSON.parse(JSON.stringify(shop.events)) as readonly RegisterEvent[];
    expect(checkChain(stored).kind).toBe('answer');
    for (const event of stored) expect(readRegisterEvent(event)).toEqual({ kind: 'answer', value: event });
  });

  it('that makes no sense at all is folded without a throw', () => {
    fc.assert(
      fc.property(fc.array(anyRegisterFact, { maxLength: 30 }), (facts) => {
        const register = replayRegister(facts.map(inJournal));
        expect(register.head.sequence).toBe(facts.length);
        for (const instrument of inUse(register)) standing(instrument, '2026-03-02');
      }),
      { numRuns: 300 },
    );
  });

  it('replayed in parts comes to the same as replayed whole, and what was seen before never changes', () => {
    fc.assert(
      fc.property(fc.array(anyRegisterFact, { maxLength: 30 }), fc.nat(), (facts, cut) => {
        const events = facts.map(inJournal);
        const at = cut % (events.length + 1);
        const before = replayRegister(events.slice(0, at));
        const seen = structuredClone(before);
        expect(events.slice(at).reduce(evolveRegister, before)).toEqual(replayRegister(events));
        expect(before).toEqual(seen);
      }),
      { numRuns: 200 },
    );
  });

  it('whatever is asked, is answered with an event that can be read again and fits the chain, or with a remedy', () => {
    fc.assert(
      fc.property(fc.array(anyRegisterFact, { maxLength: 20 }), (facts) => {
        const shop = new Shop();
        for (const [at, fact] of facts.entries()) {
          const answer = shop.askFact(fact, at);
          if (answer.kind === 'refused') expect(answer.refusal.remedy).not.toBe('');
          else expect(readRegisterEvent(JSON.parse(JSON.stringify(answer.value))).kind).toBe('answer');
        }
        expect(checkChain(shop.events).kind).toBe('answer');
        expect(shop.events[0]?.before).toBe(noHash);
      }),
      { numRuns: 200 },
    );
  });

  it('takes a command sent twice in a row once', () => {
    const shop = new Shop();
    const first = shop.check('2026-03-02');
    const again = shop.ask('2026-03-02', { ...shop.checking }, first.id);
    expect(again).toEqual({ kind: 'answer', value: first });
    expect(shop.events).toHaveLength(2);
  });

  it('begins empty', () => {
    expect(emptyRegister.instruments.size).toBe(0);
  });
});
