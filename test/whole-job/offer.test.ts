/** @module An offer in the terminal: the workshop described, two plans offered, accepted, changed, asked again, verified. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { OfferMade } from '../../src/job/offer.ts';
import { bench } from './endfloat.ts';

let time = '2026-11-02T08:00:00.000Z';
const at = bench(() => time);
beforeAll(async () => {
  expect((await at.ask(['demo'])).code).toBe(0);
}, 120_000);
afterAll(at.clear);

const told = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, err }).toEqual({ words, code: 0, err: '' });
  return out;
};
const refused = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, out }).toEqual({ words, code: 1, out: '' });
  return err;
};
const offers = async (): Promise<readonly OfferMade[]> =>
  (JSON.parse(await told('offer', 'J-2', '--json')) as { offers: readonly OfferMade[] }).offers;

const twoPlans = ['--plan', 'as wanted: labour=16h', '--plan', 'ready soonest: days=6 labour=18.5h'];

describe('an offer in the terminal', { timeout: 120_000 }, () => {
  it('stands on what the workshop says of itself, which is changed key by key', async () => {
    expect(await told('workshop')).toMatch(/taxes +sales tax 12 %/);
    const said = await told('workshop', 'taxes=sales tax 8.875 %; quay due 1.5 %', 'valid-days=14');
    expect(said).toMatch(/taxes +sales tax 8\.875 %; quay due 1\.5 %\n/);
    expect(said).toMatch(/labour-rate +42\.00 an hour\n/);
    expect(await refused('workshop', 'taxes=sales tax 119 %')).toContain('119 % is no rate of tax');
    expect((await at.ask(['workshop', 'taxes=some'])).err).toContain('it is not a name and a rate');
  });

  it('puts two plans side by side, to the hundredth', async () => {
    expect(await told('offer', 'J-2')).toContain('No offer is made yet');
    const text = await told('offer', 'J-2', 'make', ...twoPlans);
    expect(text).toContain('not answered; valid until 2026-11-16');
    const [offer] = await offers();
    const sums = offer?.plans.map(({ cents, labour }) =>
      labour.reduce((sum, line) => sum + line.cents, cents),
    );
    // source: worked by hand from the plans’ own cost: with labour 180.00 + 95.00 + 16 h or 18.5 h at 42.00
    expect(sums).toEqual(
      offer?.plans.map(({ cents }, index) => cents + 27_500 + (index === 0 ? 67_200 : 77_700)),
    );
    // source: prices of the engine type added by hand: 7.50 + 12.40 + 8.60 + 4.20 + 6 × 3.10 + 8 × 0.85 + 12 × 0.60
    // + 6 × 0.40 + 2 × 5.30 + 3 × 0.55
    expect(text).toMatch(/Gaskets, seals, other one-use +79\.95 crowns +79\.95 crowns\n/);
    expect(await told('plan', 'J-2')).toContain(
      'other one-use items add 79.95 crowns (1 × sump gasket 7.50, ',
    );
    expect(text).toContain(`Link: /offer/`);
    expect(text).toContain('answers on this machine alone');
  });

  it('writes its page', async () => {
    await told('offer', 'J-2', 'page', '--to', 'offer.html');
    const html = readFileSync(join(at.folder, 'offer.html'), 'utf8');
    expect(html).toMatch(/^<!DOCTYPE html>/);
    for (const words of [
      'B: <bdi>ready soonest</bdi>',
      'sales tax 8.875 %',
      'Nether Saltmarsh',
      'big end bolts, stretched once',
    ])
      expect(html).toContain(words);
    expect(html).not.toContain((await offers())[0]?.token);
  });

  it('is not made of the same plan twice, nor of one that cannot be had', async () => {
    expect(await refused('offer', 'J-2', 'make', '--plan', 'one', '--plan', 'other')).toContain(
      'the same as plan A',
    );
    expect(await refused('offer', 'J-2', 'make', '--plan', 'for ever: hours-wanted=900000')).toContain(
      'no plan',
    );
    const wrong = await at.ask(['offer', 'J-2', 'make', '--plan', 'x: hour=3']);
    expect(wrong).toMatchObject({ code: 2, err: expect.stringContaining('there is no key hour') as string });
    expect(await offers()).toHaveLength(1);
  });

  it('takes the owner’s word on one of its plans, once', async () => {
    const word = ['do', 'J-2', 'note-agreement', 'name=B. Sallowby', 'how=by telephone'];
    expect(await refused(...word, 'offer=1', 'plan=C')).toContain('choose plan A or B');
    await told(...word, 'offer=1', 'plan=B');
    expect(await told('show', 'J-2')).toContain('by telephone, to plan B of offer 1');
    expect(await refused(...word, 'offer=1', 'plan=A')).toContain('plan B of it was accepted on 2026-11-02');
  });

  it('asks again once the plan is changed, and the record shows both', async () => {
    await told('choose', 'J-2');
    expect(await told('show', 'J-2')).toContain('Not agreed yet.');
    await told('record', 'J-2', '--to', 'record.html');
    const html = readFileSync(join(at.folder, 'record.html'), 'utf8');
    expect(html).toContain('Agreed before by B. Sallowby, by telephone, to plan B of offer 1');
    expect(html).toContain('the shop has chosen a plan anew');
    expect(await told('verify', 'record.html')).toMatch(/^Verified: J-2/);
    // One hundredth less to pay shows.
    const [, pay = ''] = /offer 1 plan B \/ To pay":"([\d.]+) crowns/.exec(html) ?? [];
    expect(pay).not.toBe('');
    const changed = html.replaceAll(pay, (Number(pay) - 0.01).toFixed(2));
    writeFileSync(join(at.folder, 'changed.html'), changed);
    expect(await refused('verify', 'changed.html')).toContain('To pay');
  });

  it('is over after its last day', async () => {
    await told('offer', 'J-2', 'make', '--plan', 'as wanted', '--valid-days', '3');
    time = '2026-11-06T00:00:00.000Z';
    expect(await told('offer', 'J-2', 'show', '2')).toContain('over since 2026-11-05: make a new one');
    const word = ['do', 'J-2', 'note-agreement', 'name=B. Sallowby', 'how=by letter', 'offer=2', 'plan=A'];
    expect(await refused(...word)).toContain('it was valid until 2026-11-05');
  });
});
