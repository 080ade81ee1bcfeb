/** @module The invented workshop's instruments, as they stood in its register when the jobs were begun. */
import type { Instrument } from '../src/measure/instrument.ts';
import { replayRegister } from '../src/register/evolve.ts';
import { inUse } from '../src/register/register.ts';
import { registerEvents } from './register.ts';

export const instruments: readonly Instrument[] = inUse(replayRegister(registerEvents));
