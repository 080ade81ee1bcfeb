/** @module How long the engine lasts with a plan, in words: hours, the chance of those wanted, the parts that go first. */
import type { EngineType } from '../engine/engine-type.ts';
import { type EngineLife, engineLasts, firstByComponent } from '../plan/engine-life.ts';
import type { Plan } from '../plan/plan-model.ts';
import { formatFigure } from '../quantity/figure.ts';

const percent = (share: number): string =>
  share < 0.005 ? 'under 1 %' : share > 0.995 ? 'over 99 %' : `${formatFigure(share * 100, 0)} %`;

const hoursText = (hours: number): string => `${formatFigure(hours, 0)} h`;

/** How many of the parts likeliest to go first are named. */
const named = 3;

/**
 * Lines to be read under a plan.
 *
 * @param life    of the plan's choices
 * @param wanted  hours, where any are wanted
 */
export const lifeWords = (
  engine: EngineType,
  { choices, hours }: Pick<Plan, 'choices' | 'hours'>,
  life: EngineLife,
  wanted: number | undefined,
): readonly string[] => {
  const first = firstByComponent(life.first)
    .slice(0, named)
    .map(({ component, places, share }) => {
      const title = engine.components.get(component)?.title ?? component;
      return `${title}${places > 1 ? ` (any of ${places})` : ''} ${percent(share)}`;
    });
  return [
    `Each part by itself: nine in ten such parts outlast ${hoursText(hours)}.`,
    `The engine, until the first of its parts goes: nine in ten such engines outlast ${hoursText(life.countedOn)}, half of them ${hoursText(life.middle)}.`,
    ...(wanted === undefined
      ? []
      : [
          `Chance that no part goes within the ${hoursText(wanted)} wanted: ${percent(engineLasts(choices, wanted))}.`,
        ]),
    `Likeliest to go first: ${first.join(', ')}.`,
    'Parts are taken to wear each by itself, which makes the engine’s hours rather too few. It compares plans; it does not rate an engine.',
  ];
};
