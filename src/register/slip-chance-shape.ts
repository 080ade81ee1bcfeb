/** @module The shape of how often a slip happens, in the register's journal and in a job's. */
import { z } from 'zod';
import { words } from '../journal/shape.ts';

export const slipChance = z.strictObject({ slip: words, onceIn: z.int().min(0).max(1_000_000_000) });
