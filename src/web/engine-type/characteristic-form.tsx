/** @module One characteristic of an engine type as a form: what it is, its limits as the manual prints them, their page. */
import { stringify } from 'yaml';
import { fileData } from '../../engine/edit/edit-engine.ts';
import type { EngineEdit } from '../../engine/edit/engine-edit.ts';
import { valueAt } from '../../engine/edit/file-data.ts';
import type { EngineType } from '../../engine/engine-type.ts';
import type { FilePath } from '../../engine/file-path.ts';
import { engineSchema } from '../../engine/json-schema.ts';
import type { Trouble } from '../../engine/trouble.ts';
import { Choice } from '../shell/field.tsx';
import { CommittedField } from './committed-field.tsx';
import { LimitFields } from './limit-fields.tsx';
import { troublesAt } from './troubles-at.ts';

const entryShape = engineSchema().properties?.characteristics?.additionalProperties;

/** The words that the file allows for a key of a characteristic. */
const allowed = (key: string): readonly string[] =>
  typeof entryShape === 'object' ? (entryShape.properties?.[key]?.enum ?? []).map(String) : [];

const listText = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : '');

const listOf = (text: string): readonly string[] | undefined => {
  const names = text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  return names.length === 0 ? undefined : names;
};

/** How it is worked out, on one line, as the file writes it. */
const derivedText = (value: unknown): string =>
  value === undefined ? '' : stringify(value, { collectionStyle: 'flow', lineWidth: 0 }).trim();

const derivedOf = (text: string): unknown => {
  if (text === '') return undefined;
  const read = fileData(`derived: ${text}`);
  return read.kind === 'answer' ? valueAt(read.value.data, ['derived']) : text;
};

interface StepFound {
  readonly component: string;
  readonly title: string;
  readonly step: string;
  readonly at: number;
}

/** Rework steps of components that are machined at this characteristic. */
const stepsOf = (data: unknown, name: string): readonly StepFound[] => {
  const components = valueAt(data, ['components']);
  return Object.entries((components ?? {}) as Readonly<Record<string, unknown>>).flatMap(
    ([component, entry]) => {
      const steps = valueAt(entry, ['sizes', 'steps']);
      if (valueAt(entry, ['sizes', 'of']) !== name || !Array.isArray(steps)) return [];
      return steps.map((step, at) => ({
        component,
        title: String(valueAt(entry, ['title']) ?? component),
        step: String(valueAt(step, ['name']) ?? ''),
        at,
      }));
    },
  );
};

export interface CharacteristicFormProps {
  readonly name: string;
  readonly data: unknown;
  readonly engine: EngineType | undefined;
  readonly troubles: readonly Trouble[];
  readonly edit: (...edits: readonly EngineEdit[]) => void;
}

export const CharacteristicForm = ({ name, data, engine, troubles, edit }: CharacteristicFormProps) => {
  const path: FilePath = ['characteristics', name];
  const at = (...keys: FilePath) => valueAt(data, [...path, ...keys]);
  const set = (keys: FilePath, value: unknown) =>
    edit({ kind: 'set value', path: [...path, ...keys], value: value === '' ? undefined : value });
  const text = (
    label: string,
    keys: FilePath,
    hint?: string,
    read = (said: string): unknown => said,
    shown?: string,
  ) => {
    const { wrong, odd } = troublesAt(troubles, [...path, ...keys]);
    const says = odd === undefined ? hint : `Look again: ${odd}`;
    return (
      <CommittedField
        label={label}
        value={shown ?? String(at(...keys) ?? '')}
        wrong={wrong}
        onCommit={(said) => set(keys, read(said))}
        {...(says === undefined ? {} : { hint: says })}
      />
    );
  };
  const choice = (label: string, key: string, words: readonly string[], none?: string) => {
    const { wrong } = troublesAt(troubles, [...path, key]);
    return (
      <div>
        <Choice
          label={label}
          value={String(at(key) ?? '')}
          onChange={(value) => set([key], value)}
          of={[
            ...(none === undefined ? [] : [{ value: '', words: none }]),
            ...words.map((value) => ({ value, words: value })),
          ]}
        />
        {wrong === undefined ? null : <p className="wrong">{wrong}</p>}
      </div>
    );
  };
  const places = Object.keys((valueAt(data, ['places']) ?? {}) as Readonly<Record<string, unknown>>);
  const derived = at('derived') !== undefined;
  return (
    <section className="column" aria-label={String(at('title') ?? name)}>
      <h2>{String(at('title') ?? name)}</h2>
      <div className="two-up">
        {text('Title', ['title'])}
        {text('Page of the manual', ['source'], 'Where these limits are printed.')}
        {choice('Kind of place', 'at', places)}
        {choice('Which way it wears', 'wears', allowed('wears'))}
        {choice('What it is a figure of', 'quantity', allowed('quantity'), 'length, nothing said')}
        {derived ? null : choice('Instrument', 'instrument', allowed('instrument'), 'not said')}
        {derived ? null : choice('Material', 'material', allowed('material'), 'not said')}
        {derived
          ? null
          : text(
              'Planes',
              ['scheme', 'planes'],
              'Names with commas between, in the order in which they are taken.',
              listOf,
              listText(at('scheme', 'planes')),
            )}
        {derived
          ? null
          : text(
              'Axes',
              ['scheme', 'axes'],
              'Names with commas between.',
              listOf,
              listText(at('scheme', 'axes')),
            )}
      </div>
      {text(
        'Worked out from',
        ['derived'],
        'Empty where it is read; else as in the file, such as { difference: [bore-diameter, piston-diameter] }.',
        derivedOf,
        derivedText(at('derived')),
      )}
      <p className="hint">
        Figures with their unit, as the manual prints them, last zeros too. Where it prints two units, the
        second in brackets: 54.970 mm (2.1642 in). The first is reckoned with.
      </p>
      <LimitFields
        title="Limits, standard size"
        owner={{ characteristic: name }}
        path={[...path, 'limits']}
        data={data}
        characteristic={engine?.characteristics.get(name)}
        limits={engine?.characteristics.get(name)?.limits}
        troubles={troubles}
        edit={edit}
      />
      {stepsOf(data, name).map((one) => (
        <LimitFields
          key={`${one.component} ${one.step}`}
          title={`${one.title}, step ${one.step}`}
          owner={{ component: one.component, step: one.step }}
          path={['components', one.component, 'sizes', 'steps', one.at, 'limits']}
          data={data}
          characteristic={engine?.characteristics.get(name)}
          limits={engine?.components.get(one.component)?.sizes?.steps[one.at]?.limits}
          troubles={troubles}
          edit={edit}
        />
      ))}
    </section>
  );
};
