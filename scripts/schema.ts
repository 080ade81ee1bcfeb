/** @module `npm run schema`: publishes the JSON Schema of the engine type file, for editors. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { engineSchema } from '../src/engine/json-schema.ts';

const folder = new URL('../schema/', import.meta.url);

mkdirSync(folder, { recursive: true });
writeFileSync(new URL('engine-type-1.json', folder), `${JSON.stringify(engineSchema(), undefined, 2)}\n`);
