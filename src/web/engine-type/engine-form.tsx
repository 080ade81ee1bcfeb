/** @module The figures of an engine type that belong to no characteristic: the engine itself, torques, the pumps' setting. */
import type { EngineEdit } from '../../engine/edit/engine-edit.ts';
import { valueAt } from '../../engine/edit/file-data.ts';
import type { FilePath } from '../../engine/file-path.ts';
import type { Trouble } from '../../engine/trouble.ts';
import { CommittedField } from './committed-field.tsx';
import { troublesAt, troublesUnder } from './troubles-at.ts';

type Read = (said: string) => unknown;

const asTyped: Read = (said) => said;
const whole: Read = (said) => (/^\d+$/.test(said) ? Number(said) : said);
const parts = (said: string): readonly string[] =>
  said
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
/** A comma between the figures of a list may not stand in one of them as well: lists are typed with points. */
const figures: Read = (said) => parts(said);
const wholes: Read = (said) => parts(said).map(whole);

interface Line {
  readonly label: string;
  readonly path: FilePath;
  readonly read?: Read;
  readonly hint?: string;
}

const engineLines: readonly Line[] = [
  { label: 'Title of the engine type', path: ['title'] },
  { label: 'The manual', path: ['source'], hint: 'Its number and edition.' },
  { label: 'Cylinders', path: ['cylinders'], read: whole },
  { label: 'Stroke', path: ['stroke'] },
  { label: 'Connecting rod, between centres', path: ['rod'] },
  { label: 'Pin offset', path: ['pin-offset'] },
  { label: 'Firing order', path: ['firing-order'], read: wholes, hint: 'Cylinders with commas between.' },
];

const timingLines: readonly Line[] = [
  { label: 'Datum', path: ['pump-timing', 'datum'] },
  { label: 'Rate', path: ['pump-timing', 'rate'], hint: 'Such as 0.95 deg/mm.' },
  { label: 'Tolerance', path: ['pump-timing', 'tolerance'] },
  { label: 'Page of the manual, pumps', path: ['pump-timing', 'source'] },
];

const fastenerLines = (data: unknown): readonly Line[] =>
  Object.entries((valueAt(data, ['fasteners']) ?? {}) as Readonly<Record<string, unknown>>).map(
    ([name, entry]) => ({
      label: `${String(valueAt(entry, ['title']) ?? name)}: stages`,
      path: ['fasteners', name, 'stages'],
      read: figures,
      hint: 'Torques in order with commas between, each with its unit.',
    }),
  );

const shown = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : String(value ?? ''));

const Lines = ({
  title,
  lines,
  data,
  troubles,
  edit,
}: {
  readonly title: string;
  readonly lines: readonly Line[];
  readonly data: unknown;
  readonly troubles: readonly Trouble[];
  readonly edit: (edit: EngineEdit) => void;
}) => (
  <fieldset className="part">
    <legend>
      <h3>{title}</h3>
    </legend>
    <div className="two-up">
      {lines.map(({ label, path, read = asTyped, hint }) => {
        const { wrong, odd } = troublesAt(troubles, path);
        const inside = troublesUnder(troubles, path)
          .filter(({ where }) => where !== path.join(', '))
          .map(({ what, remedy }) => `${what}: ${remedy}`);
        const says = [wrong, ...inside].filter((one) => one !== undefined).join('; ');
        const below = odd === undefined ? hint : `Look again: ${odd}`;
        return (
          <CommittedField
            key={path.join('/')}
            label={label}
            value={shown(valueAt(data, path))}
            wrong={says === '' ? undefined : says}
            onCommit={(said) =>
              edit({ kind: 'set value', path, value: said === '' ? undefined : read(said) })
            }
            {...(below === undefined ? {} : { hint: below })}
          />
        );
      })}
    </div>
  </fieldset>
);

export const EngineForm = ({
  data,
  troubles,
  edit,
}: {
  readonly data: unknown;
  readonly troubles: readonly Trouble[];
  readonly edit: (edit: EngineEdit) => void;
}) => {
  const fasteners = fastenerLines(data);
  const timing = valueAt(data, ['pump-timing']) !== undefined;
  const given = { data, troubles, edit };
  return (
    <section className="column" aria-label="The engine itself">
      <h2>The engine itself</h2>
      <Lines title="Engine" lines={engineLines} {...given} />
      {fasteners.length === 0 ? null : <Lines title="Torques" lines={fasteners} {...given} />}
      {timing ? <Lines title="Setting of the pumps" lines={timingLines} {...given} /> : null}
      <p className="hint">
        Places, components, offers, couplings, fasteners and operations are put in and taken out under Text.
      </p>
    </section>
  );
};
