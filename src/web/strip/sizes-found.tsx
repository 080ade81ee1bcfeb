/** @module Sizes at which reworked parts were found, of all places or of one: limits follow the size. */
import { useState } from 'react';
import type { Component } from '../../engine/engine-type.ts';
import { opensKind } from '../../job/scope.ts';
import { sizeAt } from '../../job/size-at.ts';
import { sizeCautionsOf } from '../../job/size-cautions.ts';
import { placesOfComponent } from '../../measure/fitted-size.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { Choice } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { noteSizeFound } from './strip-actions.ts';

const several = 'several';

const namesOf = ({ sizes }: Component): readonly string[] => [
  'standard',
  ...(sizes?.steps ?? []).map(({ name }) => name),
];

const worded = (names: readonly string[]) => names.map((name) => ({ value: name, words: name }));

const OneComponent = ({
  component,
  onRefused,
}: {
  readonly component: Component;
  readonly onRefused: (refusal: Refusal | undefined) => void;
}) => {
  const job = useJob();
  const act = useAct();
  const { engine } = job.sheet;
  const names = namesOf(component);
  const places = placesOfComponent(engine, component).map((id) => ({
    id,
    title: engine.places.get(id)?.title ?? id,
    ...sizeAt(job, component.name, id),
  }));
  const sizes = new Set(places.map(({ fitted }) => fitted));
  const [first = 'standard'] = sizes;
  const note = (size: string, place?: string) =>
    onRefused(act(noteSizeFound, { component: component.name, ...(place !== undefined && { place }), size }));
  return (
    <div className="column">
      <Choice
        label={component.title}
        value={sizes.size > 1 ? several : first}
        onChange={(size) => (size === several ? undefined : note(size))}
        of={[...worded(names), ...(sizes.size > 1 ? [{ value: several, words: 'not all of one size' }] : [])]}
      />
      {places.length > 1 ? (
        <Aside words={`Place by place: ${component.title}`}>
          <div className="two-up">
            {places.map(({ id, title, fitted, planned }) => (
              <Choice
                key={id}
                label={`${title}: ${component.title}`}
                value={fitted}
                onChange={(size) => note(size, id)}
                of={worded(names)}
                {...(planned === undefined || planned === fitted
                  ? {}
                  : { hint: `To be ${planned} by the plan.` })}
              />
            ))}
          </div>
        </Aside>
      ) : null}
    </div>
  );
};

export const SizesFound = () => {
  const job = useJob();
  const [refusal, setRefusal] = useState<Refusal>();
  const reworked = [...job.sheet.engine.components.values()].filter(
    ({ sizes, at }) => sizes !== undefined && opensKind(job, at),
  );
  if (reworked.length === 0) return null;
  return (
    <section className="part" aria-label="Sizes found">
      <h2>Found at a rework size?</h2>
      {sizeCautionsOf(job).map(({ says }) => (
        <p key={says} className="caution">
          <strong>Caution:</strong> {says}
        </p>
      ))}
      <div className="two-up">
        {reworked.map((component) => (
          <OneComponent key={component.name} component={component} onRefused={setRefusal} />
        ))}
      </div>
      <Refused refusal={refusal} />
    </section>
  );
};
