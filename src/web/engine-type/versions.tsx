/** @module The versions of an engine type, who stands for each, and what changed from one to the next. */
import { useMemo } from 'react';
import { changesBetween } from '../../engine/edit/changes.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';
import { Aside } from '../shell/aside.tsx';
import { ChangeTable } from './change-table.tsx';
import type { TypeSheetProps } from './type-sheet-props.ts';

const Changed = ({ from, to }: { readonly from: EngineTypeListed; readonly to: EngineTypeListed }) => {
  const changes = useMemo(() => changesBetween(from.text, to.text), [from, to]);
  return changes.kind === 'refused' ? (
    <p>One of the two cannot be read.</p>
  ) : (
    <ChangeTable caption={`From version ${from.version} to version ${to.version}`} changes={changes.value} />
  );
};

const Version = ({
  type,
  before,
}: {
  readonly type: EngineTypeListed;
  readonly before: EngineTypeListed | undefined;
}) => {
  const { engine } = useMemo(() => readEngineType(type.text), [type.text]);
  const sheet = `/engine-types/${encodeURIComponent(type.id)}/blank-sheet?version=${type.version}`;
  return (
    <li>
      <div className="what">
        <h2>Version {type.version}</h2>
        <p>
          {engine?.entered
            ? `Typed in by ${engine.entered.by}, ${engine.entered.on}.`
            : 'Not said who typed it in.'}{' '}
          {engine?.checked
            ? `Checked by ${engine.checked.by}, ${engine.checked.on}.`
            : (engine?.differs.length ?? 0) > 0
              ? `Not checked: ${engine?.differs.length} figures were read differently.`
              : 'Not checked by a second person.'}
        </p>
        {before === undefined ? null : (
          <Aside words={`What changed since version ${before.version}`}>
            <Changed from={before} to={type} />
          </Aside>
        )}
      </div>
      <a className="button" href={sheet}>
        Measuring sheet to print
      </a>
    </li>
  );
};

export const Versions = ({ versions }: TypeSheetProps) => (
  <ol className="steps" aria-label="Versions, the newest first">
    {versions.map((type, at) => (
      <Version key={type.version} type={type} before={versions[at + 1]} />
    ))}
  </ol>
);
