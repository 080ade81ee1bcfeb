/** @module Words that others typed, made safe for a terminal: no control characters, no reversed writing. */

// Control characters move the cursor and colour the screen; marks of direction make a line read backwards.
const unseen = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

export const plain = (text: string): string => text.replace(unseen, ' ');
