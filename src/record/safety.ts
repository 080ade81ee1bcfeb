/** @module The words of caution and of limits that stand on every record. */

const overruled =
  "The maker's manual, local codes and licensed practice overrule this record and the program that made it. " +
  'Its sums advise a competent person.';

export const safetyWords: readonly string[] = [
  overruled,
  'Sizes are as found when they were read. The size of a machined or new part stands on the certificate of whoever made it, unless it was read again here.',
  'First start: have the means to shut off the air and the fuel in reach, prove that the rack moves freely from stop to stop, and keep clear of the flywheel. Never use a hand to block the air.',
  'Fuel under pressure goes through skin. Search for leaks with card, never with a hand; an injury is for a hospital at once.',
  'Lift by rated points only and never stand under the load. Mind hot parts, springs under load and turning couplings.',
  'Run only with fresh air and the exhaust led away. Treat old gaskets and lagging as asbestos until proved otherwise.',
];
