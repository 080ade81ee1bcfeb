/** @module Types of what builds the browser app, for the tests that build it. */

/** What went wrong, or undefined when dist/web is up to date. */
export declare const buildWebIfStale: () => Promise<string | undefined>;
