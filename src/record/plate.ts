/** @module Names and what they hold, ruled like an engine's plate. */
import { escaped, words } from './html.ts';
import type { Line } from './record-model.ts';

export const plate = (lines: readonly Line[]): string =>
  `<dl class="plate">\n${lines
    .map((line) => `<dt>${escaped(line.name)}</dt><dd>${words(line.says)}</dd>\n`)
    .join('')}</dl>\n`;
