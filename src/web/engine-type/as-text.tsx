/** @module The engine type as text, with what is wrong in it by line and column. */
import { useMemo } from 'react';
import { readCheckedType } from '../../job/sum/checked-engine-type.ts';
import { Field } from '../shell/field.tsx';
import { TroubleTable } from './trouble-table.tsx';
import type { TypeSheetProps } from './type-sheet-props.ts';

export const AsText = ({ draft }: TypeSheetProps) => {
  const { troubles } = useMemo(() => readCheckedType(draft.text), [draft.text]);
  return (
    <>
      <div role="status">
        <TroubleTable caption="What is wrong in the text, and where" troubles={troubles} />
      </div>
      <Field
        label="Engine type file (YAML)"
        className="as-text"
        value={draft.text}
        onChange={draft.set}
        rows={28}
        hint="Comments and the order of the file stay as they are typed."
      />
    </>
  );
};
