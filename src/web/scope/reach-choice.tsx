/** @module What an overhaul is to reach: kinds of place, or places one by one, picked with a finger. */
import { useMemo } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { EngineType, PlaceKind } from '../../engine/engine-type.ts';
import { extentOf } from '../../work/extent.ts';

/** Kinds that some operation lays open. */
const reachable = (engine: EngineType): readonly PlaceKind[] =>
  [...engine.placeKinds.values()].filter(({ name }) => extentOf(engine, { reach: [name] }).kind === 'answer');

export const ReachChoice = ({
  engine,
  reach,
  onChange,
}: {
  readonly engine: EngineType;
  readonly reach: readonly string[];
  readonly onChange: (reach: readonly string[]) => void;
}) => {
  const kinds = useMemo(() => reachable(engine), [engine]);
  const extent = useMemo(() => extentOf(engine, { reach }), [engine, reach]);
  if (kinds.length === 0)
    return <p>The engine type does not say what its operations take off: the job goes all the way.</p>;
  // All of a kind takes the place of one after another of it.
  const toggle = (name: string, on: boolean) => {
    const others = reach.filter((one) => one !== name && engine.places.get(one)?.kind !== name);
    onChange(on ? [...others, name] : others);
  };
  const taken = extent.kind === 'answer' ? extent.value : undefined;
  return (
    <fieldset className="column">
      <legend>What is reached</legend>
      {kinds.map(({ name, title, count, along }) => (
        <div key={name} className="reach-choice">
          <ToggleButton isSelected={reach.includes(name)} onChange={(on) => toggle(name, on)}>
            {reach.includes(name) ? '✓ ' : ''}
            {title}
            {count > 1 ? `, all ${count}` : ''}
          </ToggleButton>
          {count > 1 && along === 'cylinder' && !reach.includes(name)
            ? Array.from({ length: count }, (_, at) => `${name}.${at + 1}`).map((place, at) => (
                <ToggleButton
                  key={place}
                  aria-label={`${title} ${at + 1}`}
                  isSelected={reach.includes(place)}
                  onChange={(on) => toggle(place, on)}
                >
                  {reach.includes(place) ? '✓ ' : ''}
                  {at + 1}
                </ToggleButton>
              ))
            : null}
        </div>
      ))}
      <p role="status">
        {taken === undefined || taken.whole
          ? `The whole engine: all ${engine.operations.size} operations.`
          : `${taken.operations.size} of ${engine.operations.size} operations; ${taken.open.size} of ${engine.places.size} places are laid open.`}
      </p>
    </fieldset>
  );
};
