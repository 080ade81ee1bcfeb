/** @module How bad a finding is, and what a crack test and a hardness tester showed. */
import type { FindingGrade } from '../../job/event.ts';
import { Aside } from '../shell/aside.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { crackTests, type Finding, findingGrades } from './strip-actions.ts';

const testWords = ({ by, showed }: (typeof crackTests)[number]): string => `${by}: ${showed}`;

/** What was not said is left out, and never empty. */
const without = (form: Finding, key: 'grade' | 'crackTest' | 'hardness'): Finding => {
  const { [key]: _, ...rest } = form;
  return rest;
};

export const FindingTests = ({
  form,
  onChange,
}: {
  readonly form: Finding;
  readonly onChange: (form: Finding) => void;
}) => (
  <Aside words="How bad it is; crack test; hardness">
    <div className="two-up">
      <Choice
        label="How bad"
        value={form.grade ?? ''}
        onChange={(grade) =>
          onChange(grade === '' ? without(form, 'grade') : { ...form, grade: grade as FindingGrade })
        }
        of={[
          { value: '', words: 'not graded' },
          ...findingGrades.map((grade) => ({ value: grade, words: grade })),
        ]}
      />
      <Choice
        label="Crack test"
        value={form.crackTest ? testWords(form.crackTest) : ''}
        onChange={(words) => {
          const crackTest = crackTests.find((test) => testWords(test) === words);
          // A crack is the end of a part, until somebody who knows better says otherwise.
          const mayGoBack = crackTest?.showed === 'a crack' ? false : form.mayGoBack;
          onChange(crackTest ? { ...form, crackTest, mayGoBack } : without(form, 'crackTest'));
        }}
        of={[
          { value: '', words: 'not tested' },
          ...crackTests.map((test) => ({ value: testWords(test), words: testWords(test) })),
        ]}
      />
      <Field
        label="Hardness"
        value={form.hardness ?? ''}
        onChange={(hardness) => onChange(hardness === '' ? without(form, 'hardness') : { ...form, hardness })}
        hint="Figure and scale: 52 HRC, 210 HB."
      />
    </div>
  </Aside>
);
