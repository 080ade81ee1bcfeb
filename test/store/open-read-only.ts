/** @module Makes a store, takes the right to write from it and its folder and from itself, opens it, prints the refusal. */
import { chmodSync } from 'node:fs';
import { dirname } from 'node:path';
import { Refused } from '../../src/store/refused.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { journalOf } from './journal-fixture.ts';

const [path = ''] = process.argv.slice(2);
const made = await openSqliteStore(path);
await made.append('job-a', 0, journalOf('job-a', 2));
await made.close();
chmodSync(path, 0o444);
chmodSync(dirname(path), 0o555);
// 65534 is nobody, here and nearly everywhere; an ordinary user stays who they are.
if (process.getuid?.() === 0) {
  process.setgid?.(65534);
  process.setuid?.(65534);
}
try {
  await openSqliteStore(path);
  process.stdout.write('{}');
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  process.stdout.write(JSON.stringify(error.refusal));
}
