/** @module A program that appends event after event and says each sequence once it is acknowledged; made to be killed. */
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { journalOf, nextReading } from './journal-fixture.ts';

const [path = '', job = '', until = '0'] = process.argv.slice(2);
const store = await openSqliteStore(path);
let last = (await store.readFrom(job, 0)).at(-1);
while ((last?.sequence ?? 0) < Number(until)) {
  const event = last === undefined ? journalOf(job, 1)[0] : nextReading(job, last);
  if (event === undefined) throw new Error('a journal begins with an event');
  const answer = await store.append(job, last?.sequence ?? 0, [event]);
  if (answer.kind === 'stale') throw new Error('nobody else writes here');
  process.stdout.write(`${answer.sequence}\n`);
  last = event;
}
await store.close();
