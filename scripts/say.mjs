/** @module What the set-up scripts print: short lines while all is well, everything when something is not. */

const colour = process.stdout.isTTY && !process.env.NO_COLOR;
const paint = (code, text) => (colour ? `\u001b[${code}m${text}\u001b[0m` : text);

export const say = (text) => console.log(text);
export const bold = (text) => paint('1', text);
export const red = (text) => paint('31', text);
export const green = (text) => paint('32', text);
export const yellow = (text) => paint('33', text);

/** Ends the script with what is wrong and what to do about it. */
export const giveUp = (what, remedy) => {
  console.error(`${red('Stopped:')} ${what}\n${bold('What to do:')} ${remedy}`);
  process.exit(1);
};

/** Seconds since a moment taken with `performance.now()`, as text. */
export const since = (start) => `${((performance.now() - start) / 1000).toFixed(1)} s`;
