/** @module Serves the workshop on this machine's own address, and says what to do when the port is taken. */
import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import type { Refusal } from '../quantity/refusal.ts';
import { Refused } from '../store/refused.ts';
import { programName, type ServerParts, serverApp } from './app.ts';

/** Nobody but this machine can reach it. */
const ownAddress = '127.0.0.1';

export interface ServeOptions extends ServerParts {
  /** 0 for any that is free. */
  readonly port: number;
}

export interface Served {
  /** To open in a browser. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

const isEndfloat = async (address: string): Promise<boolean> => {
  try {
    const answer = await fetch(`${address}/api`, { signal: AbortSignal.timeout(1000) });
    const body: unknown = await answer.json();
    return typeof body === 'object' && body !== null && 'program' in body && body.program === programName;
  } catch {
    return false;
  }
};

const cannotListen = async (error: NodeJS.ErrnoException, port: number): Promise<Refusal> => {
  const address = `http://${ownAddress}:${port}`;
  if (error.code === 'EACCES')
    return { what: `port ${port} may not be used`, where: address, remedy: 'give a port from 1024 to 65535' };
  if (error.code !== 'EADDRINUSE')
    return {
      what: `port ${port} cannot be used (${error.code})`,
      where: address,
      remedy: 'give another port',
    };
  return (await isEndfloat(address))
    ? {
        what: 'Endfloat is served there already',
        where: address,
        remedy: 'open that address, or give another port',
      }
    : {
        what: `another program has port ${port}`,
        where: address,
        remedy: 'give another port, or close that program',
      };
};

/** Serves until closed. Rejects with `Refused` where the port cannot be had. */
export const serve = async ({ port, ...parts }: ServeOptions): Promise<Served> => {
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Refused({
      what: `there is no port ${port}`,
      where: 'port',
      remedy: 'give a port from 1024 to 65535',
    });
  const server = createAdaptorServer({ fetch: serverApp(parts).fetch });
  const trouble = await new Promise<NodeJS.ErrnoException | undefined>((done) => {
    server.once('error', done);
    server.listen(port, ownAddress, () => done(undefined));
  });
  if (trouble !== undefined) throw new Refused(await cannotListen(trouble, port), trouble);
  const { port: had } = server.address() as AddressInfo;
  return {
    address: `http://${ownAddress}:${had}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        // Browsers keep their connections open; a closing shop does not wait for them.
        if ('closeAllConnections' in server) server.closeAllConnections();
      }),
  };
};
