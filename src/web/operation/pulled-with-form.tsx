/** @module Asks what a stage is pulled with: the state of the threads, the wrench, new bolts or used, an adapter. */
import type { Fastener, Stage } from '../../engine/fastener.ts';
import { kindOf } from '../../engine/instrument-kind.ts';
import { threadWords } from '../../job/tighten/words.ts';
import { useJob } from '../journal/use-desk.tsx';
import { InstrumentCautions } from '../measure/instrument-cautions.tsx';
import { Aside } from '../shell/aside.tsx';
import { Choice, Field } from '../shell/field.tsx';
import type { PulledWith } from './pulled-with.ts';

const threads = (Object.keys(threadWords) as readonly Fastener['threadState'][]).map((value) => ({
  value,
  words: threadWords[value],
}));

const boltsAre = [
  { value: '', words: 'not said yet' },
  { value: 'new', words: 'new' },
  { value: 'used', words: 'used, and measured' },
] as const;

const wordAmong = <Word extends string>(text: string, among: readonly { readonly value: Word }[]): Word =>
  among.find(({ value }) => value === text)?.value ?? (among[0]?.value as Word);

/** Asked before the first bolt is pulled, where they stretch for good. */
export const NewOrUsed = ({
  fastener,
  form,
  onChange,
}: {
  readonly fastener: Fastener;
  readonly form: PulledWith;
  readonly onChange: (form: PulledWith) => void;
}) => (
  <div className="two-up">
    <Choice
      label="Bolts are"
      value={form.boltsAre}
      of={boltsAre}
      onChange={(text) => onChange({ ...form, boltsAre: wordAmong(text, boltsAre) })}
      hint="they stretch for good when they are tightened"
    />
    {fastener.stretch?.kind === 'up to a length' && form.boltsAre === 'used' ? (
      <Field
        label="The longest of them"
        value={form.longest}
        onChange={(longest) => onChange({ ...form, longest })}
        hint={`mm; ${fastener.stretch.longest} mm at most`}
        numeric
      />
    ) : null}
  </div>
);

export const PulledWithForm = ({
  stage,
  form,
  onChange,
}: {
  readonly stage: Stage;
  readonly form: PulledWith;
  readonly onChange: (form: PulledWith) => void;
}) => {
  const { sheet } = useJob();
  const wrenches = [...sheet.instruments.values()].filter(({ kind }) => kindOf(kind).measures === 'torque');
  const set = (part: Partial<PulledWith>) => onChange({ ...form, ...part });
  return (
    <div className="column">
      <div className="two-up">
        <Choice
          label="Threads as they are"
          value={form.threadState}
          of={threads}
          onChange={(text) => set({ threadState: wordAmong(text, threads) })}
        />
        {stage.kind === 'angle' ? null : (
          <Choice
            label="Torque wrench"
            value={form.wrench}
            of={[
              { value: '', words: 'none named' },
              ...wrenches.map(({ name }) => ({ value: name, words: name })),
            ]}
            onChange={(wrench) => set({ wrench })}
          />
        )}
      </div>
      {stage.kind === 'angle' ? null : (
        <>
          <InstrumentCautions instrument={sheet.instruments.get(form.wrench)} sheet={sheet} />
          <Aside words="An adapter makes the wrench longer">
            <div className="two-up">
              <Field
                label="Wrench, square to hand"
                value={form.wrenchLength}
                onChange={(wrenchLength) => set({ wrenchLength })}
                hint="mm"
                numeric
              />
              <Field
                label="Adapter, square to bolt"
                value={form.adapter}
                onChange={(adapter) => set({ adapter })}
                hint="mm"
                numeric
              />
              <Field
                label="Adapter, off the line"
                value={form.adapterAngle}
                onChange={(adapterAngle) => set({ adapterAngle })}
                hint="deg; empty where it points straight on"
                numeric
              />
            </div>
          </Aside>
        </>
      )}
    </div>
  );
};
