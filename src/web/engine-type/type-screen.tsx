/** @module One engine type: its versions, its figures by form and as text, limits from a table, the second check. */
import type { ComponentType } from 'react';
import { Link } from 'wouter';
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';
import { Cell, Sheet } from '../shell/sheet.tsx';
import { AsText } from './as-text.tsx';
import { useDraft } from './draft.ts';
import './engine-type.css';
import { FiguresForm } from './figures-form.tsx';
import { LimitsTableSheet } from './limits-table-sheet.tsx';
import { Saving } from './saving.tsx';
import { SecondCheck } from './second-check.tsx';
import { useVersions } from './shelf.ts';
import { typeAddress, typeSheets } from './type-address.ts';
import type { TypeSheetProps } from './type-sheet-props.ts';
import { Versions } from './versions.tsx';

const shownAt: Readonly<
  Record<string, { readonly sheet: ComponentType<TypeSheetProps>; readonly edits: boolean }>
> = {
  versions: { sheet: Versions, edits: false },
  form: { sheet: FiguresForm, edits: true },
  text: { sheet: AsText, edits: true },
  limits: { sheet: LimitsTableSheet, edits: true },
  check: { sheet: SecondCheck, edits: false },
};

const Sheets = ({ id, slug }: { readonly id: string; readonly slug: string }) => (
  <nav className="phases" aria-label="Sheets of the engine type">
    {typeSheets.map((sheet) => (
      <Link
        key={sheet.slug}
        href={typeAddress(id, sheet.slug)}
        aria-current={sheet.slug === slug ? 'page' : undefined}
      >
        {sheet.name}
        <span className="state">{sheet.says}</span>
      </Link>
    ))}
  </nav>
);

const Opened = ({
  versions,
  slug,
}: {
  readonly versions: readonly EngineTypeListed[];
  readonly slug: string;
}) => {
  const [newest] = versions;
  if (!newest) throw new Error('an engine type is opened with its versions');
  const draft = useDraft(newest.id, newest);
  const shown = shownAt[slug] ?? shownAt.versions;
  const name = typeSheets.find((sheet) => sheet.slug === slug)?.name ?? 'Versions';
  if (!shown) return null;
  const { sheet: Shown, edits } = shown;
  return (
    <Sheet
      heading={`${name}, ${newest.title}`}
      block={
        <>
          <Cell name="engine type" long>
            {newest.title}
          </Cell>
          <Cell name="version">{newest.version}</Cell>
          <Cell name="all types">
            <Link href="/engine-types">the shelf</Link>
          </Cell>
        </>
      }
      phases={<Sheets id={newest.id} slug={slug} />}
    >
      <h1 className="heard-only">
        {name}, {newest.title}
      </h1>
      {edits ? <Saving newest={newest} draft={draft} /> : null}
      <Shown newest={newest} versions={versions} draft={draft} />
    </Sheet>
  );
};

const TypeScreen = ({ id, slug }: { readonly id: string; readonly slug: string }) => {
  const versions = useVersions(id);
  if (versions.data && versions.data.length > 0)
    return <Opened key={id} versions={versions.data} slug={slug} />;
  return (
    <Sheet heading="Engine type">
      <h1>Engine type</h1>
      <p role="status">
        {versions.isPending
          ? 'Fetching the engine type …'
          : versions.isError
            ? 'The workshop’s store does not answer. Look whether the server runs.'
            : 'There is no such engine type on the shelf.'}
      </p>
      <p>
        <Link href="/engine-types">All engine types</Link>
      </p>
    </Sheet>
  );
};

export default TypeScreen;
