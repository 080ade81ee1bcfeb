/** @module A program that puts picture after picture and says the number of each once it is acknowledged; made to be killed. */

import { cleanPicture } from '../../src/picture/picture.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { drawnPng } from '../picture/drawn-png.ts';

const [path = ''] = process.argv.slice(2);
const store = await openSqliteStore(path);
for (let shade = 1; shade < 256; shade += 1) {
  const clean = cleanPicture(drawnPng(shade), 'picture');
  if (clean.kind === 'refused') throw new Error(clean.refusal.what);
  const put = await store.putPicture(clean.value.picture.hash, clean.value.bytes);
  if (put.kind === 'refused') throw new Error(put.refusal.what);
  process.stdout.write(`${shade}\n`);
}
await store.close();
