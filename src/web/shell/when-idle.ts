/** @module Work that waits until hands rest; browsers that tell no idle time are given a moment instead. */

/** Hands that type on and on leave no idle moment: it is done by then all the same, milliseconds. */
const patience = 500;
const moment = 120;

/** @returns what calls it off */
export const whenIdle = (work: () => void): (() => void) => {
  if (typeof requestIdleCallback === 'function') {
    const idle = requestIdleCallback(work, { timeout: patience });
    return () => cancelIdleCallback(idle);
  }
  const timer = setTimeout(work, moment);
  return () => clearTimeout(timer);
};
