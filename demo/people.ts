/** @module The invented people of the invented workshop. */

export const shop = 'Saltmarsh Bench & Bore';
export const bench = 'bench 2';

/** Foreman: books in, decides, hands over. */
export const foreman = 'Perpetua Sallow';
/** Fitter: strips, measures, builds. */
export const fitter = 'Odo Ferrick';
/** Apprentice. */
export const apprentice = 'Wilmot Tansy';
