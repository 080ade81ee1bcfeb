/** @module Chooses the engine type: from the workshop's shelf, or from a file whose troubles are shown where they stand. */
import { useMemo } from 'react';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { TroubleTable } from '../engine-type/trouble-table.tsx';
import { useEngineTypes } from '../jobs/workshop-lists.ts';
import { Choice } from '../shell/field.tsx';
import { FileField } from '../shell/file-field.tsx';

const fromFile = 'from a file';

export const EngineChoice = ({
  text,
  source,
  onChange,
}: {
  readonly text: string;
  /** The shelf's id, or `from a file`. */
  readonly source: string;
  readonly onChange: (text: string, source: string) => void;
}) => {
  const shelf = useEngineTypes();
  const read = useMemo(() => (text === '' ? undefined : readEngineType(text)), [text]);
  const types = shelf.data ?? [];
  const choose = (id: string) => onChange(types.find((type) => type.id === id)?.text ?? '', id);
  return (
    <div className="column">
      <Choice
        label="Engine type"
        value={source}
        onChange={choose}
        hint={
          shelf.isError
            ? 'The shelf cannot be reached; open a file instead.'
            : 'The job stays with the version it begins with.'
        }
        of={[
          { value: '', words: 'choose one …' },
          ...types.map((type) => ({ value: type.id, words: `${type.title}, version ${type.version}` })),
          { value: fromFile, words: 'open a file …' },
        ]}
      />
      {source === fromFile ? (
        <FileField
          label="Engine type file (YAML or JSON)"
          accept=".yaml,.yml,.json"
          onFile={async (chosen) => onChange(await chosen.text(), fromFile)}
        />
      ) : null}
      {read === undefined ? null : (
        <div role="status">
          <p>
            {read.engine === undefined
              ? 'This file cannot be used until the errors below are mended.'
              : `${read.engine.title}: ${read.engine.cylinders} cylinders ${read.engine.layout}, ${read.engine.characteristics.size} characteristics. Source: ${read.engine.source}.`}
            {read.engine !== undefined && read.engine.checked === undefined
              ? ' Nobody has checked its figures a second time.'
              : ''}
          </p>
          <TroubleTable caption="What is wrong in the file, and where" troubles={read.troubles} />
        </div>
      )}
    </div>
  );
};
