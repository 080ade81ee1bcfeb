/** @module Every property test draws from one seed, so that a commit gets the same answer each time; `npm run soak` sets others. */
import fc from 'fast-check';

const usual = 1_961;

fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? usual) });
