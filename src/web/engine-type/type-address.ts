/** @module Addresses of the sheets of an engine type. */

export const typeSheets = [
  { slug: 'versions', name: 'Versions', says: 'what changed' },
  { slug: 'form', name: 'Figures', says: 'one by one' },
  { slug: 'text', name: 'Text', says: 'the file' },
  { slug: 'limits', name: 'Limits table', says: 'CSV or XLSX' },
  { slug: 'check', name: 'Second check', says: 'typed in unseen' },
] as const;
export type TypeSheet = (typeof typeSheets)[number]['slug'];

export const typeAddress = (id: string, sheet: TypeSheet = 'versions'): string =>
  `/engine-types/${encodeURIComponent(id)}/${sheet}`;
