/** @module Takes the list of instruments that older stores kept into the register, each as entered there. */
import type { Kysely } from 'kysely';
import { v7 } from 'uuid';
import { decideRegister } from '../register/decide.ts';
import { type RegisterEvent, registerId } from '../register/event.ts';
import { emptyRegister, evolveRegister } from '../register/evolve.ts';
import { readRegisterRequest } from '../register/read.ts';
import { Refused } from './refused.ts';

/** The tables as they were when this step was written. */
type Then = {
  readonly instrument: { readonly name: string; readonly body: string };
  readonly journal: {
    readonly job_id: string;
    readonly version: number;
    readonly event_id: string;
    readonly kind: string;
    readonly at: string;
    readonly hash: string;
    readonly body: string;
  };
};

const asEntered = (rows: readonly Then['instrument'][]): readonly RegisterEvent[] => {
  const at = new Date().toISOString();
  let register = emptyRegister;
  return rows.map(({ name, body }) => {
    const request = readRegisterRequest({
      kind: 'enter instrument',
      instrument: JSON.parse(body) as unknown,
    });
    const event =
      request.kind === 'refused'
        ? request
        : decideRegister(register, {
            id: v7(),
            job: registerId,
            at,
            actor: 'Endfloat',
            bench: 'taken over from the list kept before',
            request: request.value,
          });
    if (event.kind === 'refused') throw new Refused({ ...event.refusal, where: `instrument ${name}` });
    register = evolveRegister(register, event.value);
    return event.value;
  });
};

/** Who checked them, and when, the list did not say: their zeros are kept, without a day. */
export const takeOverInstruments = async (db: Kysely<unknown>): Promise<void> => {
  const then = db.withTables<Then>();
  const rows = await then.selectFrom('instrument').selectAll().orderBy('name').execute();
  const events = asEntered(rows);
  for (const event of events)
    await then
      .insertInto('journal')
      .values({
        job_id: `register/${registerId}`,
        version: event.sequence,
        event_id: event.id,
        kind: event.fact.kind,
        at: event.at,
        hash: event.hash,
        body: JSON.stringify(event),
      })
      .execute();
  await db.schema.dropTable('instrument').execute();
};
