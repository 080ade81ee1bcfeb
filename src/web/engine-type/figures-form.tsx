/** @module The figures of an engine type, characteristic by characteristic. */
import { type FormEvent, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { editEngine, fileData } from '../../engine/edit/edit-engine.ts';
import type { EngineEdit } from '../../engine/edit/engine-edit.ts';
import { valueAt } from '../../engine/edit/file-data.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { CharacteristicForm } from './characteristic-form.tsx';
import { EngineForm } from './engine-form.tsx';
import { TroubleTable } from './trouble-table.tsx';
import { troublesUnder } from './troubles-at.ts';
import type { TypeSheetProps } from './type-sheet-props.ts';

const namesIn = (data: unknown): readonly string[] =>
  Object.keys((valueAt(data, ['characteristics']) ?? {}) as Readonly<Record<string, unknown>>);

/** What is chosen where no characteristic is: no name of one has a blank in it. */
const engineItself = 'engine itself';

const NewCharacteristic = ({
  names,
  onAdd,
}: {
  readonly names: readonly string[];
  readonly onAdd: (name: string) => void;
}) => {
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState<string>();
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (!/^[a-z][a-z0-9-]{0,63}$/.test(name))
      return setWrong('a name is small letters, digits and hyphens, beginning with a letter');
    if (names.includes(name)) return setWrong('there is one of that name');
    setWrong(undefined);
    setName('');
    onAdd(name);
  };
  return (
    <form className="column" onSubmit={add}>
      <Field
        label="New characteristic"
        value={name}
        onChange={setName}
        wrong={wrong}
        hint="such as rocker-shaft-diameter"
      />
      <Button type="submit">Add it</Button>
    </form>
  );
};

export const FiguresForm = ({ draft }: TypeSheetProps) => {
  const file = useMemo(() => fileData(draft.text), [draft.text]);
  const { engine, troubles } = useMemo(() => readEngineType(draft.text), [draft.text]);
  const [chosen, setChosen] = useState<string>();
  const [refusal, setRefusal] = useState<Refusal>();
  if (file.kind === 'refused')
    return (
      <>
        <p className="note">The file cannot be read, so that there is no form. Mend it under Text.</p>
        <TroubleTable caption="What is wrong in the text, and where" troubles={troubles} />
      </>
    );
  const { data } = file.value;
  const names = namesIn(data);
  const name = chosen === engineItself || names.includes(chosen ?? '') ? chosen : (names[0] ?? engineItself);
  const edit = (...edits: readonly EngineEdit[]) => {
    const edited = editEngine(draft.text, edits);
    setRefusal(edited.kind === 'refused' ? edited.refusal : undefined);
    if (edited.kind === 'answer') draft.set(edited.value.text);
  };
  const add = (added: string) => {
    const [place = ''] = Object.keys((valueAt(data, ['places']) ?? {}) as Readonly<Record<string, unknown>>);
    edit({
      kind: 'set entry',
      in: 'characteristics',
      name: added,
      entry: { title: added.replaceAll('-', ' '), at: place, wears: 'smaller' },
    });
    setChosen(added);
  };
  const elsewhere = troubles.filter((one) => !troublesUnder([one], ['characteristics']).includes(one));
  return (
    <>
      <Refused refusal={refusal} />
      <div className="type-work">
        <div className="column">
          <ul className="contents" aria-label="Characteristics">
            <li>
              <button
                type="button"
                aria-current={name === engineItself}
                onClick={() => setChosen(engineItself)}
              >
                The engine itself
              </button>
            </li>
            {names.map((one) => {
              const wrong = troublesUnder(troubles, ['characteristics', one]);
              const worst = wrong.some(({ weight }) => weight === 'error')
                ? '✕ error'
                : wrong.length > 0
                  ? '? look again'
                  : '';
              return (
                <li key={one}>
                  <button type="button" aria-current={one === name} onClick={() => setChosen(one)}>
                    {String(valueAt(data, ['characteristics', one, 'title']) ?? one)}
                    {worst === '' ? null : <span>{worst}</span>}
                  </button>
                </li>
              );
            })}
          </ul>
          <NewCharacteristic names={names} onAdd={add} />
        </div>
        <div className="column">
          {name === undefined || name === engineItself ? (
            <EngineForm data={data} troubles={troubles} edit={edit} />
          ) : (
            <>
              <CharacteristicForm
                key={name}
                name={name}
                data={data}
                engine={engine}
                troubles={troubles}
                edit={edit}
              />
              <div>
                <Button onPress={() => edit({ kind: 'remove entry', in: 'characteristics', name })}>
                  Take this characteristic out
                </Button>
              </div>
            </>
          )}
          <TroubleTable caption="Elsewhere in the file" troubles={elsewhere} />
        </div>
      </div>
    </>
  );
};
