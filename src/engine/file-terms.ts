/** @module What every part of an engine type file is written in: names, words, figures with units, bounds, prices. */
import { z } from 'zod';

export const name = z
  .string()
  .regex(/^[a-z][a-z0-9-]{0,63}$/, 'a name is small letters, digits and hyphens, beginning with a letter');
export const names = z.array(name).min(1).max(64);
export const words = z.string().min(1).max(400);
/**
 * A figure with its unit, as the manual prints it: `54.980 mm`, `90 N·m`, `0.95 deg/mm`; where the manual prints
 * it in two units, the second in brackets: `54.970 mm (2.1642 in)`.
 */
export const figure = z.string().min(1).max(60);

export const bounds = z
  .strictObject({ least: figure.optional(), greatest: figure.optional() })
  .describe('a least figure, a greatest figure or both');

export const price = z
  .string()
  .regex(/^\d{1,7}(\.\d{1,2})?$/, 'a price is a decimal with at most two places, without currency');

export const limitsFile = z.strictObject({
  new: bounds.optional().describe('limits as made'),
  wear: bounds.optional().describe('how far it may go and still be put back'),
});

export const instrumentKind = z.enum([
  'outside micrometer',
  'bore gauge',
  'dial gauge',
  'depth gauge',
  'feeler set',
  'caliper',
  'ball micrometer',
  'spring tester',
  'protractor',
  'torque wrench',
  'pressure gauge',
  'scales',
]);

export const material = z.enum(['steel', 'cast iron', 'aluminium', 'bronze']);
