/** @module Words for tightening: a stage, the state of the threads, the way to turn. */
import type { Fastener, Stage } from '../../engine/fastener.ts';
import { typedText } from '../../quantity/typed.ts';
import type { Tightening } from './tightening.ts';

/** As the manual prints it: `40 N·m`, `60° further`. */
export const stageText = ({ kind, printed }: Stage): string => {
  if (kind === 'torque') return typedText(printed);
  return `${printed.unit === 'deg' ? `${printed.text}°` : typedText(printed)} further`;
};

export const threadWords: Readonly<Record<Fastener['threadState'], string>> = {
  dry: 'threads dry',
  oiled: 'threads oiled',
  compound: 'threads with compound',
};

export const turnWords = ({ hand }: Pick<Fastener, 'hand'>): string =>
  hand === 'left' ? 'left-hand thread: turn it anticlockwise to tighten' : 'turn it clockwise to tighten';

/** `head nuts on their studs, cylinder head`. */
export const jointWords = ({ fastener, place }: Pick<Tightening, 'fastener' | 'place'>): string =>
  `${fastener.title}, ${place.title}`;

/** `stage 2 of 3, 75 N·m`. */
export const stageWords = ({ stages }: Pick<Tightening, 'stages'>, at: number): string => {
  const stage = stages[at]?.stage;
  return `stage ${at + 1} of ${stages.length}${stage === undefined ? '' : `, ${stageText(stage)}`}`;
};
