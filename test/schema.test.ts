/** @module The published JSON Schema of the engine type file. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { engineSchema } from '../src/engine/json-schema.ts';

it('is what the engine type is read by; npm run schema publishes it again', () => {
  const published: unknown = JSON.parse(
    readFileSync(new URL('../schema/engine-type-1.json', import.meta.url), 'utf8'),
  );
  expect(published).toEqual(JSON.parse(JSON.stringify(engineSchema())));
});
