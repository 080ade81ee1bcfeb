/** @module Labels as they print: which size lies in the printer, how much of its first sheet is left, for which parts. */
import { useMemo, useState } from 'react';
import { readTag } from '../../job/home/tag-text.ts';
import { tagsToPrint } from '../../job/home/tags-to-print.ts';
import { labelSizes } from '../../record/labels/label-size.ts';
import { labelsPage } from '../../record/labels/labels-page.ts';
import { useJob } from '../journal/use-desk.tsx';
import { PaperShown } from '../order/paper-shown.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';

const LabelsSheet = () => {
  const job = useJob();
  const [name, setName] = useState('70x37');
  const [skip, setSkip] = useState('0');
  const [only, setOnly] = useState('');
  const size = labelSizes.find((one) => one.name === name);
  const read = only.trim() === '' ? [] : only.split(/[,;]/).map((typed) => readTag(job, typed));
  const unknown = read.find((one) => one.kind === 'refused');
  const tags = useMemo(() => {
    const named = only.trim() === '' ? [] : only.split(/[,;]/).map((typed) => readTag(job, typed));
    return named.length === 0
      ? tagsToPrint(job)
      : named.flatMap((one) => (one.kind === 'answer' ? [one.value] : []));
  }, [job, only]);
  const html = useMemo(
    () => (size ? labelsPage(job, { size, tags, skip: Number(skip) || 0 }) : ''),
    [job, size, tags, skip],
  );
  return (
    <>
      <ThreeAnswers
        where="labels for the parts that come off"
        now="put the paper in, and print at 100 %"
        right={`${tags.length} labels, numbered as on the sheet of tags`}
      />
      <div className="row">
        <Choice
          label="In the printer"
          value={name}
          onChange={setName}
          of={labelSizes.map((one) => ({ value: one.name, words: one.title }))}
        />
        <Field label="Used up on the first sheet" value={skip} onChange={setSkip} numeric />
        <Field
          label="Only these tags"
          value={only}
          onChange={setOnly}
          hint="numbers, with commas; all where empty"
        />
      </div>
      <Refused refusal={unknown?.kind === 'refused' ? unknown.refusal : undefined} />
      <p>
        Without a printer the number alone does: write job {job.booked.number} and the number of the tag on
        the bag.
      </p>
      <PaperShown title={`Labels for job ${job.booked.number}`} html={html} />
    </>
  );
};

export default LabelsSheet;
