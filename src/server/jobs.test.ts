/** @module Jobs over HTTP. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking, micrometer, mm } from '../../test/job/bench.ts';
import { command, type Desk, eventsOf, job, openDesk, reading, refusalOf } from '../../test/server/desk.ts';
import { checkChain } from '../journal/chain.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

describe('a job over HTTP', () => {
  it('is booked in, listed and read', async () => {
    const booked = await desk.send(booking);
    expect(booked.status).toBe(200);
    expect(await eventsOf(booked)).toMatchObject([{ sequence: 1, fact: { kind: 'booked in' } }]);
    expect(await (await desk.get('/api/jobs')).json()).toMatchObject({
      jobs: [{ job, number: '26-031', sequence: 1 }],
    });
    expect(await eventsOf(await desk.get(`/api/jobs/${job}/events`))).toHaveLength(1);
    expect(await eventsOf(await desk.get(`/api/jobs/${job}/events?after=1`))).toEqual([]);
  });

  it('answers a command with every event that the bench has not seen, its own last', async () => {
    await desk.send(booking);
    await desk.send({ kind: 'bring instrument', instrument: micrometer }, 1);
    const events = await eventsOf(await desk.send(reading, 1));
    expect(events.map(({ fact }) => fact.kind)).toEqual(['instrument brought', 'reading taken']);
    expect(checkChain(await desk.store.readFrom(job, 0)).kind).toBe('answer');
  });

  it('takes a command once however often it is sent, at once or later', async () => {
    await desk.send(booking);
    await desk.send({ kind: 'bring instrument', instrument: micrometer });
    const once = command(reading);
    const body = { command: once, after: 2 };
    const both = await Promise.all([1, 2, 3].map(() => desk.post(`/api/jobs/${job}/commands`, body)));
    for (const answer of both) expect(await eventsOf(answer)).toMatchObject([{ id: once.id, sequence: 3 }]);
    await desk.send({ ...reading, typed: mm('49.981') });
    const late = await eventsOf(await desk.post(`/api/jobs/${job}/commands`, body));
    expect(late.map(({ sequence }) => sequence)).toEqual([3, 4]);
    expect(await desk.store.readFrom(job, 0)).toHaveLength(4);
  });

  it('takes the commands of sixteen benches at once, one after the other', async () => {
    await desk.send(booking);
    await desk.send({ kind: 'bring instrument', instrument: micrometer });
    const answers = await Promise.all(Array.from({ length: 16 }, () => desk.send(reading)));
    expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 16 }, () => 200));
    const journal = await desk.store.readFrom(job, 0);
    expect(journal).toHaveLength(18);
    expect(checkChain(journal).kind).toBe('answer');
  });

  it('sees what another program put into the store', async () => {
    await desk.send(booking);
    await desk.beside().send({ kind: 'bring instrument', instrument: micrometer }, 1);
    expect((await desk.send(reading)).status).toBe(200);
  });

  it('refuses in the words of the trade, and writes nothing', async () => {
    await desk.send(booking);
    const answer = await desk.send(reading);
    expect(answer.status).toBe(422);
    expect(await refusalOf(answer)).toMatchObject({
      where: 'main bearing 1, main journal diameter, vertical',
    });
    expect(await desk.store.readFrom(job, 0)).toHaveLength(1);
  });

  it.each([
    ['no JSON', '{"command":'],
    ['no command', { after: 0 }],
    ['half a command', { command: { id: 'a' }, after: 0 }],
    ['a sequence below none', { command: command(booking), after: -1 }],
    ['a command for another job', { command: { ...command(booking), job: 'job-2' }, after: 0 }],
  ])('refuses %s with a remedy', async (_, body) => {
    const answer = await desk.post(`/api/jobs/${job}/commands`, body);
    expect(answer.status).toBe(422);
    expect((await refusalOf(answer)).remedy).not.toBe('');
    expect(await desk.store.list()).toEqual([]);
  });

  it('refuses a sequence that is none', async () => {
    expect((await desk.get(`/api/jobs/${job}/events?after=x`)).status).toBe(422);
  });

  it('gives its record as a page that loads and runs nothing, and as a file', async () => {
    await desk.send(booking);
    const page = await desk.get(`/jobs/${job}/record`);
    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/);
    expect(await page.text()).toContain('26-031');
    const file = await desk.get(`/api/jobs/${job}/record-file`);
    expect(file.headers.get('content-disposition')).toBe('attachment; filename="job-26-031.json"');
    expect(JSON.parse(await file.text())).toMatchObject({ journal: [{ sequence: 1 }] });
  });

  it('has no record where it is not there', async () => {
    expect((await desk.get('/jobs/none/record')).status).toBe(404);
    expect((await desk.get('/api/jobs/none/record-file')).status).toBe(404);
  });
});
