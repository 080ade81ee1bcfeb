/** @module Whether two names are one person, as far as their letters tell. */

const bare = (name: string): string => name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();

export const samePerson = (one: string, other: string): boolean => bare(one) === bare(other);
