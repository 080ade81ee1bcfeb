/** @module Serving on this machine's own address. */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { networkInterfaces } from 'node:os';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../store/sql-store.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import { type Served, serve } from './serve.ts';

let store: Store;
let open: Served[];
beforeEach(async () => {
  store = await openSqliteStore(':memory:');
  open = [];
});
afterEach(async () => {
  for (const served of open) await served.close();
  await store.close();
});

const served = async (port = 0): Promise<Served> => {
  const one = await serve({ store, port, webFolder: '/nowhere' });
  open.push(one);
  return one;
};

describe('serving', () => {
  it('answers on the address that it gives, until it is closed', async () => {
    const { address, close } = await serve({ store, port: 0, webFolder: '/nowhere' });
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(await (await fetch(`${address}/api/jobs`)).json()).toEqual({ jobs: [] });
    await close();
    await expect(fetch(`${address}/api/jobs`)).rejects.toThrow();
  });

  it('cannot be reached under another address of this machine', async (test) => {
    const other = Object.values(networkInterfaces())
      .flat()
      .find((one) => one?.family === 'IPv4' && !one.internal)?.address;
    if (other === undefined) return test.skip('this machine has no other address');
    const port = new URL((await served()).address).port;
    await expect(
      fetch(`http://${other}:${port}/api`, { signal: AbortSignal.timeout(2000) }),
    ).rejects.toThrow();
  });

  it('says that it is served already where it is', async () => {
    const { address } = await served();
    await expect(served(Number(new URL(address).port))).rejects.toMatchObject({
      refusal: { what: 'Endfloat is served there already', where: address },
    });
  });

  it('says that another program has the port where one has', async () => {
    const other = createServer((_, answer) => answer.end('{}'));
    await new Promise<void>((done) => {
      other.listen(0, '127.0.0.1', done);
    });
    const { port } = other.address() as AddressInfo;
    await expect(served(port)).rejects.toMatchObject({
      refusal: { what: `another program has port ${port}`, remedy: expect.stringContaining('another port') },
    });
    other.close();
  });

  it.each([-1, 65536, 1.5, Number.NaN])('refuses the port %s', async (port) => {
    await expect(served(port)).rejects.toMatchObject({ refusal: { where: 'port' } });
  });
});
