/** @module What an offer's link ends in: chance enough that nobody guesses it. */

const bytes = 24;

/** 32 letters, digits, hyphens and low lines. */
export const newToken = (): string =>
  btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(bytes))))
    .replaceAll('+', '-')
    .replaceAll('/', '_');
