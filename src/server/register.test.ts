/** @module The register of instruments over HTTP. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { micrometer, mm } from '../../test/job/bench.ts';
import { type Desk, openDesk, refusalOf } from '../../test/server/desk.ts';
import type { RegisterRequest } from '../register/command.ts';
import { type RegisterEvent, registerId } from '../register/event.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

const command = (request: RegisterRequest, id: string) => ({
  id,
  job: registerId,
  at: '2026-03-02T08:00:00Z',
  actor: 'Ilse Quarrow',
  bench: 'bench 2',
  request,
});

const { zero: _, ...described } = micrometer;
const enter: RegisterRequest = { kind: 'enter instrument', instrument: described };
const check = (showed: string, good: boolean): RegisterRequest => ({
  kind: 'check instrument',
  name: micrometer.name,
  against: 'zero',
  showed: mm(showed),
  good,
  note: '',
});

const ask = (request: RegisterRequest, id: string, after = 0) =>
  desk.post('/api/register/commands', { command: command(request, id), after });

describe('the register over HTTP', () => {
  it('takes an instrument that makes sense, and no other', async () => {
    expect((await ask(enter, 'one')).status).toBe(200);
    const wrong = { ...described, resolution: mm('0') };
    expect((await ask({ kind: 'enter instrument', instrument: wrong }, 'two')).status).toBe(422);
    expect((await desk.post('/api/register/commands', { command: { name: 'x' } })).status).toBe(422);
    expect(await (await desk.get('/api/instruments')).json()).toEqual({ instruments: [described] });
  });

  it('gives instruments as they stand: last checked, and none that was withdrawn', async () => {
    await ask(enter, 'one');
    await ask(check('0.001', true), 'two');
    expect(await (await desk.get('/api/instruments')).json()).toEqual({
      instruments: [
        { ...described, zero: mm('0.001'), checked: { on: '2026-03-02', against: 'zero', good: true } },
      ],
    });
    await ask({ kind: 'withdraw instrument', name: micrometer.name, why: 'anvil chipped' }, 'three');
    expect(await (await desk.get('/api/instruments')).json()).toEqual({ instruments: [] });
  });

  it('counts a command sent twice once, and gives the events after a sequence', async () => {
    await ask(enter, 'one');
    await ask(check('0.001', true), 'two');
    const again = await ask(check('0.001', true), 'two', 1);
    expect(((await again.json()) as { events: RegisterEvent[] }).events).toMatchObject([
      { id: 'two', sequence: 2, fact: { kind: 'instrument checked' } },
    ]);
    const all = await desk.get('/api/register/events?after=0');
    expect(((await all.json()) as { events: unknown[] }).events).toHaveLength(2);
    expect((await desk.get('/api/register/events?after=x')).status).toBe(422);
  });

  it('refuses what is wrong in words, and what is for another journal', async () => {
    const unknown = await ask(check('0.001', true), 'one');
    expect(await refusalOf(unknown)).toMatchObject({
      what: expect.stringContaining('no instrument') as string,
    });
    const elsewhere = { ...command(enter, 'two'), job: 'another' };
    const answer = await desk.post('/api/register/commands', { command: elsewhere });
    expect(await refusalOf(answer)).toMatchObject({ what: 'this command is not for the register' });
  });

  it('says that nothing is in question where nothing is', async () => {
    await ask(enter, 'one');
    expect(await (await desk.get('/api/register/in-question')).json()).toEqual({ instruments: [] });
  });
});
