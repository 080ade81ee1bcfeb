/** @module Shows a watching person that work of more than a second goes on. */
import type { World } from './world.ts';

/** Told which share of the work is done, 0 to 1. */
export type Tell = (share: number) => void;

/**
 * Runs the work; after a second a line on stderr counts the seconds, or shows the share that is done where the work
 * tells it, and is wiped when the work ends.
 */
export const showing = async <T>(
  label: string,
  world: World,
  work: (tell: Tell) => Promise<T>,
): Promise<T> => {
  if (!world.watched) return work(() => undefined);
  const begun = performance.now();
  let shown = '';
  const show = (text: string): void => {
    if (text === shown) return;
    shown = text;
    world.err(`\r${label} … ${text}`);
  };
  const seconds = (): number => Math.floor((performance.now() - begun) / 1000);
  const timer = setInterval(() => show(`${Math.max(1, seconds())} s`), 1000);
  try {
    return await work((share) => {
      if (seconds() > 0) show(`${Math.floor(share * 100)} %`);
    });
  } finally {
    clearInterval(timer);
    if (shown !== '') world.err(`\r${' '.repeat(label.length + 12)}\r`);
  }
};
