/** @module May this operation be signed as done, and this step of running be logged? */
import { chooseName } from '../../engine/nearest-name.ts';
import { badFigure, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import { standingOf } from '../holds.ts';
import type { OpenJob } from '../job.ts';
import { undone } from '../undone.ts';

export const doOperationTrouble = (job: OpenJob, { operation }: RequestOf<'do operation'>): Trouble => {
  const { engine } = job.sheet;
  const known = engine.operations.get(operation);
  if (known === undefined)
    return trouble(
      `${engine.title} has no operation “${operation}”`,
      'operation',
      chooseName(operation, engine.operations.keys()),
    );
  const standing = standingOf(job, known);
  switch (standing.kind) {
    case 'open':
      return undefined;
    case 'done':
      return trouble(
        `it was signed by ${standing.signed.by} on ${standing.signed.at.slice(0, 10)}`,
        known.title,
        'nothing is left to do',
      );
    case 'held': {
      const [first] = standing.lacking;
      return trouble(
        standing.lacking.map(({ says }) => says).join('; '),
        known.title,
        first?.remedy ?? 'do what is missing first',
      );
    }
    default:
      return standing satisfies never;
  }
};

export const logRunStepTrouble = (job: OpenJob, asked: RequestOf<'log run step'>): Trouble => {
  const left = undone(job, ['build', 'set']);
  if (left.length > 0)
    return trouble(
      `the engine is not ready to run: ${left.join(', ')}`,
      'run step',
      'finish the build and the settings first',
    );
  return (
    badFigure(asked.speed, 'speed', 'run step, speed', { from: 0 }) ??
    badLoad(asked) ??
    (asked.minutes > 0
      ? undefined
      : trouble('a step lasts some minutes', 'run step', 'give the minutes it ran')) ??
    badFigure(asked.oilPressure, 'pressure', 'run step, oil pressure') ??
    badFigure(asked.waterTemperature, 'temperature', 'run step, water temperature')
  );
};

/** Load is told as a share of full load or as the brake's torque. */
const badLoad = ({ load }: RequestOf<'log run step'>): Trouble =>
  badFigure(load, 'torque', 'run step, load', { from: 0 }) === undefined
    ? undefined
    : badFigure(load, 'ratio', 'run step, load', { from: 0 });
