/** @module How long the engine lasts with the plan shown: its curve, and the parts likeliest to go first. */
import { useMemo } from 'react';
import { lifeCurve } from '../../drawing/life-curve.ts';
import type { EngineType } from '../../engine/engine-type.ts';
import { lifeWords } from '../../job/life-words.ts';
import { engineLife } from '../../plan/engine-life.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { Drawing } from '../drawing/drawing.tsx';

export const EngineLifeShown = ({
  engine,
  plan,
  wanted,
}: {
  readonly engine: EngineType;
  readonly plan: Plan;
  readonly wanted: number | undefined;
}) => {
  const life = useMemo(() => engineLife(plan.choices), [plan]);
  const drawing = useMemo(() => lifeCurve(life, wanted), [life, wanted]);
  return (
    <section aria-label="How long the engine lasts" data-life={life.countedOn}>
      <h3>How long the engine lasts</h3>
      <ul>
        {lifeWords(engine, plan, life, wanted).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Drawing drawing={drawing} className="life-curve" />
    </section>
  );
};
