/** @module Addresses of the reckoner: a sum with what is typed into it, so that it can be kept, sent and printed. */

export const reckonerAddress = '/reckoner';

export const sumAddress = (name: string, texts: Readonly<Record<string, string>> = {}): string => {
  const typed = new URLSearchParams(Object.entries(texts).filter(([, text]) => text !== '')).toString();
  return `${reckonerAddress}/${encodeURIComponent(name)}${typed === '' ? '' : `?${typed}`}`;
};
