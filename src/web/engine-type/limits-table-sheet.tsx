/** @module Takes limits from a table: columns matched, what is wrong and what would change shown before anything is. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { useLocation } from 'wouter';
import { changesBetween } from '../../engine/edit/changes.ts';
import { editEngine } from '../../engine/edit/edit-engine.ts';
import {
  type ColumnMatch,
  columnWords,
  limitColumns,
  matchColumns,
} from '../../engine/edit/limit-columns.ts';
import { readLimitsTable } from '../../engine/edit/limits-table.ts';
import type { EngineType } from '../../engine/engine-type.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { announce } from '../shell/announce.ts';
import { Choice } from '../shell/field.tsx';
import { FileField } from '../shell/file-field.tsx';
import { Refused } from '../shell/refused.tsx';
import { ChangeTable } from './change-table.tsx';
import type { Draft } from './draft.ts';
import { type ChosenTable, tableIn } from './table-of-limits.ts';
import { RowTroubleTable, TroubleTable } from './trouble-table.tsx';
import { typeAddress } from './type-address.ts';
import type { TypeSheetProps } from './type-sheet-props.ts';

const notRead = '';

/** The match with a column meaning something else; what it meant before is free again. */
const matchedTo = (match: ColumnMatch, at: number, meaning: string): ColumnMatch => ({
  ...Object.fromEntries(Object.entries(match).filter(([key, column]) => column !== at && key !== meaning)),
  ...(meaning === notRead ? {} : { [meaning]: at }),
});

const Preview = ({
  table,
  engine,
  draft,
}: {
  readonly table: ChosenTable;
  readonly engine: EngineType;
  readonly draft: Draft;
}) => {
  const [, go] = useLocation();
  const headers = table.rows[0]?.fields ?? [];
  const columns = headers.map((header, at) => ({ header, at, column: `${at} ${header}` }));
  const [match, setMatch] = useState<ColumnMatch>(() => matchColumns(headers));
  const read = useMemo(() => readLimitsTable(table.rows, engine, match), [table, engine, match]);
  const edited = useMemo(() => editEngine(draft.text, read.edits), [draft.text, read]);
  const changes = useMemo(
    () => (edited.kind === 'answer' ? changesBetween(draft.text, edited.value.text) : edited),
    [draft.text, edited],
  );
  const errors = read.troubles.filter(({ weight }) => weight === 'error').length;
  const fits = errors === 0 && edited.kind === 'answer';
  const take = () => {
    if (edited.kind === 'refused') return;
    draft.set(edited.value.text);
    announce(`${read.rows} rows taken.`);
    go(typeAddress(engine.id, 'form'));
  };
  return (
    <>
      <fieldset className="part">
        <legend>
          <h2>What the columns of {table.name} mean</h2>
        </legend>
        <div className="four-up">
          {columns.map(({ header, at, column }) => (
            <Choice
              key={column}
              label={header === '' ? `column ${at + 1}, without a header` : `Column “${header}”`}
              value={limitColumns.find((meaning) => match[meaning] === at) ?? notRead}
              onChange={(meaning) => setMatch(matchedTo(match, at, meaning))}
              of={[
                { value: notRead, words: 'is not read' },
                ...limitColumns.map((meaning) => ({ value: meaning, words: columnWords[meaning] })),
              ]}
            />
          ))}
        </div>
      </fieldset>
      <section className="part" aria-label="Preview">
        <h2>What would be taken</h2>
        <p role="status">
          {read.rows} {read.rows === 1 ? 'row is' : 'rows are'} understood
          {errors === 0
            ? ''
            : `; ${errors} ${errors === 1 ? 'row has an error' : 'rows have errors'}: mend the file and choose it again, or match its columns`}
          .
        </p>
        <RowTroubleTable troubles={[...table.warnings, ...read.troubles]} />
        {changes.kind === 'answer' ? (
          <ChangeTable caption="What would change" changes={changes.value} />
        ) : (
          <Refused refusal={changes.refusal} />
        )}
        {edited.kind === 'answer' ? (
          <TroubleTable
            caption="What would then be wrong in the engine type"
            troubles={edited.value.troubles}
          />
        ) : null}
        <div>
          <Button className="first" isDisabled={!fits || read.rows === 0} onPress={take}>
            Take these {read.rows} rows
          </Button>
        </div>
      </section>
    </>
  );
};

export const LimitsTableSheet = ({ draft }: TypeSheetProps) => {
  const { engine } = useMemo(() => readEngineType(draft.text), [draft.text]);
  const [table, setTable] = useState<ChosenTable>();
  const [refusal, setRefusal] = useState<Refusal>();
  if (!engine)
    return <p className="note">The engine type has errors. Mend them first, under Figures or Text.</p>;
  return (
    <>
      <FileField
        label="Table of limits (CSV or XLSX)"
        accept=".csv,.tsv,.txt,.xlsx"
        hint="The first row names the columns. Nothing is changed before you take it."
        onFile={async (file) => {
          const read = await tableIn(file);
          setRefusal(read.kind === 'refused' ? read.refusal : undefined);
          setTable(read.kind === 'answer' ? read.value : undefined);
        }}
      />
      <Refused refusal={refusal} />
      {table === undefined ? null : (
        <Preview key={table.name + String(table.rows.length)} table={table} engine={engine} draft={draft} />
      )}
    </>
  );
};
