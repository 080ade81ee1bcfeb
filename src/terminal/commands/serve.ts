/** @module `endfloat serve`: the workshop in a browser on this machine, until it is stopped. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { answer, refuse } from '../../quantity/refusal.ts';
import { serve as serveWorkshop } from '../../server/serve.ts';
import { type Given, lastValue, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

/** Beside the sources in a checkout, beside the program in the package. */
const webFolder = (): string =>
  [new URL('../../../dist/web', import.meta.url), new URL('../../../web', import.meta.url)]
    .map((url) => fileURLToPath(url))
    .find((folder) => existsSync(folder)) ?? '';

const portOf = (given: Given): number => {
  const text = lastValue(given, 'port') ?? '4310';
  return /^\d{1,5}$/.test(text) && Number(text) <= 65_535 ? Number(text) : -1;
};

export const serve: TerminalCommand = {
  name: 'serve',
  summary: 'open the workshop to browsers on this machine',
  usage: ['serve [--port N]'],
  about: 'It listens on 127.0.0.1 alone. Stop it with Ctrl-C.',
  options: [
    ...storeOptions,
    { name: 'port', value: 'N', says: 'where to listen, else 4310; 0 takes any that is free' },
  ],
  words: [0, 0],
  run: async (given) => {
    const port = portOf(given);
    if (port < 0) return refuse('this is no port', '--port', 'give a number from 0 to 65535');
    return inWorkshop(given, true, async (store) => {
      const { world } = given;
      const folder = webFolder();
      const served = await serveWorkshop({
        store,
        port,
        webFolder: folder,
        fault: (error) => world.err(`endfloat: a fault in the program itself (${plain(String(error))})\n`),
      });
      world.out(
        given.switches.has('json')
          ? `${JSON.stringify({ address: served.address })}\n`
          : `Endfloat is open at ${served.address}\nStop it with Ctrl-C.\n`,
      );
      if (folder === '')
        world.err('endfloat: the browser app is not built (dist/web): run npm start once, which builds it\n');
      await world.stopped();
      await served.close();
      return answer({ text: '', json: { stopped: true } });
    });
  },
};
