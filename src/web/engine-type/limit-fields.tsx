/** @module The four limits of a characteristic or of a rework step, with the zone that they make, drawn. */
import { useMemo } from 'react';
import { toleranceZone } from '../../drawing/tolerance-zone.ts';
import { type EngineEdit, type LimitOwner, limitSides } from '../../engine/edit/engine-edit.ts';
import { valueAt } from '../../engine/edit/file-data.ts';
import type { Characteristic, Limits } from '../../engine/engine-type.ts';
import type { FilePath } from '../../engine/file-path.ts';
import { shownIn } from '../../engine/shown-in.ts';
import type { Trouble } from '../../engine/trouble.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { CommittedField } from './committed-field.tsx';
import { troublesAt, troublesUnder } from './troubles-at.ts';

const sideLabels: Readonly<Record<(typeof limitSides)[number], string>> = {
  'new.least': 'As made, at least',
  'new.greatest': 'As made, at most',
  'wear.least': 'May go back, at least',
  'wear.greatest': 'May go back, at most',
};

const isDrawable = (limits: Limits | undefined): limits is Limits =>
  limits !== undefined &&
  [limits.new.least, limits.new.greatest, limits.goesBack.least, limits.goesBack.greatest].some(
    (bound) => bound !== undefined,
  );

export const LimitFields = ({
  title,
  owner,
  path,
  data,
  characteristic,
  limits,
  troubles,
  edit,
}: {
  readonly title: string;
  readonly owner: LimitOwner;
  /** Of the limits in the file. */
  readonly path: FilePath;
  readonly data: unknown;
  readonly characteristic: Characteristic | undefined;
  /** As read; missing while something in the file is in error. */
  readonly limits: Limits | undefined;
  readonly troubles: readonly Trouble[];
  readonly edit: (edit: EngineEdit) => void;
}) => {
  const drawing = useMemo(
    () =>
      isDrawable(limits)
        ? toleranceZone({ title, limits, verdict: 'not yet known', shown: shownIn(characteristic) })
        : undefined,
    [title, limits, characteristic],
  );
  const shown = limitSides.map((side) => [...path, ...side.split('.')]);
  const others = troublesUnder(troubles, path).filter(
    ({ where }) => !shown.some((one) => one.join(', ') === where),
  );
  return (
    <fieldset className="part">
      <legend>
        <h3>{title}</h3>
      </legend>
      <div className="four-up">
        {limitSides.map((side) => {
          const at = [...path, ...side.split('.')];
          const { wrong, odd } = troublesAt(troubles, at);
          return (
            <CommittedField
              key={side}
              label={sideLabels[side]}
              value={String(valueAt(data, at) ?? '')}
              wrong={wrong}
              hint={odd === undefined ? undefined : `Look again: ${odd}`}
              onCommit={(figure) =>
                edit({ kind: 'set limit', of: owner, side, figure: figure === '' ? undefined : figure })
              }
            />
          );
        })}
      </div>
      {others.map((trouble) => (
        <p key={trouble.what} className={trouble.weight === 'error' ? 'wrong' : 'hint'}>
          {trouble.weight === 'error' ? '' : 'Look again: '}
          {trouble.what}: {trouble.remedy}
        </p>
      ))}
      {drawing === undefined ? (
        <p className="hint">
          {troubles.some(({ weight }) => weight === 'error')
            ? 'The zone is drawn once the errors are mended.'
            : 'No limits yet.'}
        </p>
      ) : (
        <Drawing drawing={drawing} />
      )}
    </fieldset>
  );
};
