/** @module Sizes at which reworked parts were found: limits follow the size. */
import { useState } from 'react';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Choice } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { noteSizeFound } from './strip-actions.ts';

export const SizesFound = () => {
  const job = useJob();
  const act = useAct();
  const [refusal, setRefusal] = useState<Refusal>();
  const reworked = [...job.sheet.engine.components.values()].filter(({ sizes }) => sizes !== undefined);
  if (reworked.length === 0) return null;
  return (
    <section className="part" aria-label="Sizes found">
      <h2>Found at a rework size?</h2>
      <div className="two-up">
        {reworked.map((component) => (
          <Choice
            key={component.name}
            label={component.title}
            value={job.sheet.sizesFound.get(component.name) ?? 'standard'}
            onChange={(size) => setRefusal(act(noteSizeFound, { component: component.name, size }))}
            of={['standard', ...(component.sizes?.steps ?? []).map(({ name }) => name)].map((name) => ({
              value: name,
              words: name,
            }))}
          />
        ))}
      </div>
      <Refused refusal={refusal} />
    </section>
  );
};
