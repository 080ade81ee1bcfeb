/** @module The link of an offer: opened, accepted without a script, and shut to everything else. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking, depthGauge, micrometer, mm } from '../../test/job/bench.ts';
import { offer, planA, token } from '../../test/job/offers.ts';
import { type Desk, host, job, openDesk } from '../../test/server/desk.ts';
import { replay } from '../job/evolve.ts';

let time = '2026-03-20T10:00:00.000Z';
let desk: Desk;

const link = `/offer/${job}/${offer.token}`;
const open = async () => {
  const state = replay(await desk.store.readFrom(job, 0));
  if (state.kind !== 'open') throw new Error(state.kind);
  return state;
};

/** As a browser sends a form. */
const send = (fields: Readonly<Record<string, string>>, headers: Readonly<Record<string, string>> = {}) =>
  desk.post(link, new URLSearchParams(fields).toString(), {
    'content-type': 'application/x-www-form-urlencoded',
    origin: `http://${host}`,
    ...headers,
  });

beforeEach(async () => {
  time = '2026-03-20T10:00:00.000Z';
  desk = await openDesk(() => time);
  await desk.send(booking);
  for (const instrument of [micrometer, depthGauge])
    await desk.send({ kind: 'bring instrument', instrument });
  for (const place of ['main.1', 'main.2'])
    for (const axis of ['vertical', 'horizontal'])
      await desk.send({
        kind: 'take reading',
        cell: { place, characteristic: 'main-journal-diameter', plane: '', axis },
        typed: mm('49.975'),
        instrument: micrometer.name,
      });
  expect((await desk.send(offer)).status).toBe(200);
});
afterEach(() => desk.close());

describe('the link of an offer', () => {
  it('shows the plans and a form; nothing runs on it, and it may stand in no frame', async () => {
    const answer = await desk.get(link);
    expect(answer.status).toBe(200);
    const html = await answer.text();
    expect(html).toContain('B: <bdi>ground journals</bdi>');
    expect(html).toContain(`action="${link}"`);
    const policy = answer.headers.get('content-security-policy');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("form-action 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(answer.headers.get('referrer-policy')).toBe('same-origin');
    expect(answer.headers.get('cache-control')).toBe('no-store');
  });

  it('takes the owner’s word as an event of the job, and asks nothing again when the page is loaded anew', async () => {
    const answer = await send({ plan: 'B', name: 'W. Heron' });
    expect(answer.status).toBe(303);
    expect(answer.headers.get('location')).toBe(link);
    const events = await desk.store.readFrom(job, 0);
    expect(events.at(-1)).toMatchObject({
      at: time,
      actor: 'W. Heron',
      fact: { kind: 'owner agreed', name: 'W. Heron', offer: { number: 1, plan: 'B', by: 'link' } },
    });
    expect((await open()).plan?.cents).toBe(22_600);
    const page = await (await desk.get(link)).text();
    expect(page).toContain('plan B accepted 2026-03-20');
    expect(page).not.toContain('<form');
  });

  it.each([
    [{ plan: 'B', name: ' ' }, 'write who agreed'],
    [{ name: 'W. Heron' }, 'no plan of it is chosen'],
    [{ plan: 'C', name: 'W. Heron' }, 'choose plan A or B'],
  ])('says what is missing in %j', async (fields, says) => {
    const answer = await send(fields as Record<string, string>);
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain(says);
    expect(html).toContain('<form');
    expect((await open()).agreed).toBeUndefined();
  });

  it('takes one answer', async () => {
    await send({ plan: 'A', name: 'W. Heron' });
    const again = await send({ plan: 'B', name: 'Somebody Else' });
    expect(again.status).toBe(422);
    expect(await again.text()).toContain('plan A of it was accepted on 2026-03-20');
    expect((await open()).agreed?.offer?.plan).toBe('A');
  });

  it('is over on the day after its last', async () => {
    time = '2026-04-02T00:00:01.000Z';
    expect(await (await desk.get(link)).text()).toContain('was valid until 2026-04-01');
    const answer = await send({ plan: 'A', name: 'W. Heron' });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain('it was valid until 2026-04-01');
    expect((await open()).agreed).toBeUndefined();
  });

  it('is over once a new offer is made', async () => {
    await desk.send({ ...offer, number: 2, plans: [planA], token: token('r') });
    expect(await (await desk.get(link)).text()).toContain('offer 2 has taken its place');
    expect((await send({ plan: 'A', name: 'W. Heron' })).status).toBe(422);
    expect((await desk.get(`/offer/${job}/${token('r')}`)).status).toBe(200);
  });

  it.each([
    `/offer/${job}/${token('z')}`,
    `/offer/${job}/${offer.token.slice(0, 31)}`,
    `/offer/${job}/${offer.token}x`,
    `/offer/0195a1b2-0000-7000-8000-000000000fff/${offer.token}`,
    `/offer/${job}/`,
  ])('cannot be guessed: %s', async (path) => {
    const answer = await desk.get(path);
    expect(await answer.text()).not.toContain('ground journals');
    expect(answer.headers.get('location')).toBeNull();
  });
});

describe('the form of an offer', () => {
  it.each([
    ['elsewhere', { origin: 'http://elsewhere.example' }],
    ['another port', { origin: 'http://127.0.0.1:9' }],
    ['a page that hides', { origin: 'null' }],
    ['nowhere', { origin: '' }],
  ])('is not taken from %s', async (_, headers) => {
    const answer = await send({ plan: 'A', name: 'W. Heron' }, headers);
    expect(answer.status).toBe(403);
    expect((await open()).agreed).toBeUndefined();
  });

  it('is taken at no other address', async () => {
    const form = { 'content-type': 'application/x-www-form-urlencoded', origin: `http://${host}` };
    for (const path of [`/api/jobs/${job}/commands`, '/api/register/commands', `/jobs/${job}/offers/1`])
      expect((await desk.post(path, 'plan=A', form)).status).toBe(415);
  });

  it('is taken at its address in no other kind', async () => {
    expect((await send({ plan: 'A', name: 'x' }, { 'content-type': 'multipart/form-data' })).status).toBe(
      415,
    );
    expect((await send({ plan: 'A', name: 'x' }, { 'content-type': 'text/plain' })).status).toBe(415);
  });
});

describe('the page of an offer for print', () => {
  it('has no form, and may be shown in the app', async () => {
    const answer = await desk.get(`/jobs/${job}/offers/1`);
    expect(answer.status).toBe(200);
    expect(await answer.text()).not.toContain('<form');
    expect(answer.headers.get('content-security-policy')).toContain("frame-ancestors 'self'");
  });

  it('is not there where no such offer is', async () => {
    for (const number of ['2', '0', 'x'])
      expect((await desk.get(`/jobs/${job}/offers/${number}`)).status).toBe(404);
  });
});
