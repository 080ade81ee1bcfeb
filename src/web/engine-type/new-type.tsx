/** @module Puts an engine type on the shelf that is not there yet: begun here, or from a file. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { useLocation } from 'wouter';
import { blankEngineType } from '../../engine/edit/blank-engine-type.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import type { Trouble } from '../../engine/trouble.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';
import { Field } from '../shell/field.tsx';
import { FileField } from '../shell/file-field.tsx';
import { Refused } from '../shell/refused.tsx';
import { whoNow } from '../shell/who.ts';
import { useShelving } from './shelf.ts';
import { TroubleTable } from './trouble-table.tsx';
import { typeAddress } from './type-address.ts';

const idOf = (title: string): string =>
  title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '')
    .slice(0, 64);

const there = (id: string): Refusal => ({
  what: `an engine type ${id} is on the shelf already`,
  where: 'shelf of engine types',
  remedy: 'open it and save a new version there, or give the new one another name',
});

export const NewType = ({ shelf }: { readonly shelf: readonly EngineTypeListed[] }) => {
  const shelving = useShelving();
  const [, go] = useLocation();
  const [title, setTitle] = useState('');
  const [source, setSource] = useState('');
  const [cylinders, setCylinders] = useState('4');
  const [refusal, setRefusal] = useState<Refusal>();
  const [troubles, setTroubles] = useState<readonly Trouble[]>([]);

  const shelve = async (text: string) => {
    const read = readEngineType(text);
    setTroubles(read.engine ? [] : read.troubles);
    if (!read.engine)
      return setRefusal({
        what: 'the file has errors',
        where: 'engine type file',
        remedy: 'mend them first',
      });
    const { id } = read.engine;
    if (shelf.some((type) => type.id === id)) return setRefusal(there(id));
    const done = await shelving.mutateAsync({ text });
    setRefusal(done.kind === 'refused' ? done.refusal : undefined);
    if (done.kind === 'shelved') go(typeAddress(id, 'form'));
  };
  const begin = (event: FormEvent) => {
    event.preventDefault();
    const id = idOf(title);
    const count = /^\d+$/.test(cylinders.trim()) ? Number(cylinders) : 0;
    if (id === '')
      return setRefusal({
        what: 'the title is missing',
        where: 'title',
        remedy: 'type one that begins with a letter',
      });
    if (source.trim() === '')
      return setRefusal({
        what: 'the manual is missing',
        where: 'manual',
        remedy: 'type its number and edition',
      });
    if (count < 1 || count > 20)
      return setRefusal({
        what: 'that is no count of cylinders',
        where: 'cylinders',
        remedy: 'type 1 to 20',
      });
    const on = new Date().toISOString().slice(0, 10);
    void shelve(
      blankEngineType({
        id,
        title: title.trim(),
        source: source.trim(),
        cylinders: count,
        by: whoNow().actor,
        on,
      }),
    );
  };
  return (
    <section className="part" aria-label="A new engine type">
      <h2>A new engine type</h2>
      <form className="row" onSubmit={begin}>
        <Field className="grow" label="Title" value={title} onChange={setTitle} />
        <Field className="grow" label="The manual, number and edition" value={source} onChange={setSource} />
        <Field label="Cylinders" value={cylinders} onChange={setCylinders} numeric />
        <Button type="submit">Begin it</Button>
      </form>
      <FileField
        label="Or from a file (YAML or JSON)"
        accept=".yaml,.yml,.json"
        onFile={async (chosen) => shelve(await chosen.text())}
      />
      <Refused refusal={refusal} />
      <TroubleTable caption="What is wrong in the file, and where" troubles={troubles} />
    </section>
  );
};
