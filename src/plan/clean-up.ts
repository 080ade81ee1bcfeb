/** @module Whether a rework step cleans up the worst place of what is machined. */
import type { SizeStep } from '../engine/engine-type.ts';
import { judge } from '../measure/judge.ts';
import { formatFigure } from '../quantity/figure.ts';
import { leftOver } from '../reckon/clean-up.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, type Slot } from './slot.ts';

export type CleanUp =
  | { readonly kind: 'open'; readonly reason: string }
  | { readonly kind: 'barred'; readonly says: string }
  | { readonly kind: 'not yet known'; readonly missing: readonly string[] };

/** Whether a step leaves enough to take off at the worst place, its least certain side counted: see leftOver. */
export const cleansUp = (question: PlanQuestion, slot: Slot, step: SizeStep): CleanUp => {
  const { sheet } = question;
  const { sizes } = slot.component;
  const machined = sizes && sheet.engine.characteristics.get(sizes.of);
  if (!sizes || !machined) return { kind: 'barred', says: 'it has no sizes to be machined to' };
  const shaft = machined.wears === 'smaller';
  const finished = shaft ? step.limits.new.greatest : step.limits.new.least;
  if (finished === undefined) return { kind: 'barred', says: `the size ${step.name} has no finished limit` };
  const missing: string[] = [];
  let worst: { readonly left: number; readonly place: string } | undefined;
  for (const place of judgingPlaces(sheet.engine, slot, machined.at)) {
    const cells = judge(sheet, machined.name, place).cells;
    if (cells.length === 0 || cells.some(({ size }) => !size)) missing.push(`${machined.title} at ${place}`);
    for (const { size, expanded = 0 } of cells) {
      if (!size) continue;
      const machining = { machined: shaft ? 'shaft' : 'bore', allowance: sizes.cleanUp, finished } as const;
      const left = leftOver({ ...machining, size: size.value, expanded });
      if (!worst || left < worst.left) worst = { left, place };
    }
  }
  if (missing.length > 0 || !worst) return { kind: 'not yet known', missing };
  const { left } = worst;
  const at = `${worst.place}, the worst place, its uncertain side counted`;
  return left >= 0
    ? { kind: 'open', reason: `cleans up at ${at}, with ${formatFigure(left, 3)} mm to spare` }
    : { kind: 'barred', says: `${formatFigure(-left, 3)} mm short of cleaning up at ${at}` };
};
