/** @module The shelf over HTTP. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking } from '../../test/job/bench.ts';
import { type Desk, openDesk } from '../../test/server/desk.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

describe('the shelf over HTTP', () => {
  it('takes an engine type and gives it back', async () => {
    const answer = await desk.post('/api/engine-types', { text: booking.engineType });
    expect(answer.status).toBe(201);
    expect(await (await desk.get('/api/engine-types')).json()).toMatchObject({
      engineTypes: [{ id: 'sparrowbill-2', version: 1, text: booking.engineType }],
    });
  });

  it('refuses one with an error, and names every trouble by line', async () => {
    const text = booking.engineType.replace('cylinders: 2', 'cylinders: two');
    const answer = await desk.post('/api/engine-types', { text });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      refusal: { where: 'line 7' },
      troubles: [{ weight: 'error', line: 7 }],
    });
    expect(await desk.store.engineTypes()).toEqual([]);
  });
});
