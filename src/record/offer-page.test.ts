/** @module The offer's page: everything the owner must know, in words, and a form where it can be answered. */
import { describe, expect, it } from 'vitest';
import { accepting, offer, offeredBench, planA, token } from '../../test/job/offers.ts';
import { offerPage } from './offer-page.ts';

const at = '2026-03-20T10:00:00Z';
const answering = { address: '/offer/job-1/x' };

const page = (bench = offeredBench(), ...more: [string?, Parameters<typeof offerPage>[3]?]): string => {
  const [first] = bench.open.offers;
  if (!first) throw new Error('no offer was made');
  const [when = at, answer] = more;
  return offerPage(bench.open, first, when, answer);
};

const text = (html: string): string => html.replace(/<style>.*?<\/style>/s, '').replace(/<[^>]*>/g, ' ');

describe('the page of an offer', () => {
  // source: worked by hand, see the test of the sums: 921.64 and 1375.27 with both taxes
  it('puts the plans side by side, with every line and the sums', () => {
    const says = text(page()).replace(/\s+/g, ' ');
    for (const part of [
      'Heronsway Bench',
      'Offer 1 for job 26-031',
      'A: cheapest sound plan',
      'B: ground journals',
      '14.5 h at 42.00 EUR = 609.00 EUR',
      '835.00 EUR',
      'sales tax 8.875 %',
      '74.11 EUR',
      '12.53 EUR',
      '921.64 EUR',
      '1375.27 EUR',
      '4 days',
      '2026-04-01',
      'machined, size 0.25',
      'A third before work begins.',
      'For the owner: name, signature, date',
    ])
      expect(says).toContain(part);
  });

  it('names what goes back as it is in every plan', () => {
    expect(text(page())).toMatch(
      /put back as it is in every plan: +fuel pumps, fuel pump 1; fuel pumps, fuel pump 2/,
    );
  });

  it('can be accepted only where it is served, and only while it is open', () => {
    expect(page()).not.toContain('<form');
    expect(page(offeredBench(), at, answering)).toContain('<form method="post" action="/offer/job-1/x"');
    const late = page(offeredBench(), '2026-04-02T00:00:00Z', answering);
    expect(late).not.toContain('<form');
    expect(text(late)).toContain('was valid until 2026-04-01');
    const bench = offeredBench();
    bench.done(accepting('B'));
    expect(page(bench, at, answering)).not.toContain('<form');
    expect(text(page(bench, at, answering))).toContain('plan B accepted');
    bench.done({ ...offer, number: 2, plans: [planA], token: token('r') });
    expect(text(page(bench, at, answering))).toContain('offer 2 has taken its place');
  });

  it('says why an answer was not taken, and keeps the name', () => {
    const refused = { what: 'nothing is written', where: 'agreement', remedy: 'write who agreed' };
    const html = page(offeredBench(), at, { ...answering, refused, name: 'W. "Heron"' });
    expect(text(html)).toContain('Not accepted: nothing is written (agreement): write who agreed');
    expect(html).toContain('value="W. &quot;Heron&quot;"');
  });

  it('stands alone: nothing is loaded, nothing runs, and its link is not in it', () => {
    const html = page();
    expect(html).not.toMatch(/<script|src=|@import|url\(/);
    expect(html).not.toContain(offer.token);
  });

  it('keeps what people type as words', () => {
    const bench = offeredBench();
    const odd = { ...planA, title: '<img src=x onerror=alert(1)>' };
    bench.done({ ...offer, number: 2, plans: [odd], terms: '</p><script>', token: token('r') });
    const [, second] = bench.open.offers;
    if (!second) throw new Error('no offer');
    expect(offerPage(bench.open, second, at)).not.toMatch(/<img|<script/);
  });
});
