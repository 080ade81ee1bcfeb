/** @module Shows a watching person that work of more than a second goes on. */
import type { World } from './world.ts';

/** Runs the work; after a second a line on stderr counts the seconds, and is wiped when the work ends. */
export const showing = async <T>(label: string, world: World, work: () => Promise<T>): Promise<T> => {
  if (!world.watched) return work();
  let seconds = 0;
  const timer = setInterval(() => {
    seconds += 1;
    world.err(`\r${label} … ${seconds} s`);
  }, 1000);
  try {
    return await work();
  } finally {
    clearInterval(timer);
    if (seconds > 0) world.err(`\r${' '.repeat(label.length + 12)}\r`);
  }
};
