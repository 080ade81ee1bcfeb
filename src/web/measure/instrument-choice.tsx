/** @module Which instrument is in the hand: those brought to the job first, then those on the workshop's register. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Characteristic } from '../../engine/engine-type.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Instrument } from '../../measure/instrument.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { useInstruments } from '../jobs/workshop-lists.ts';
import { useAct } from '../journal/use-desk.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { bringInstrument, readEntry } from './measure-actions.ts';

const words = (instrument: Instrument): string =>
  `${instrument.name}, ${instrument.kind}, ${instrument.range.least.text} to ${typedText(instrument.range.greatest)}`;

/** Brought ones and the register's, those of the kind that the manual asks for first. */
export const useInstrumentsFor = (
  job: OpenJob,
  characteristic: Characteristic | undefined,
): readonly Instrument[] => {
  const register = useInstruments().data;
  const brought = job.sheet.instruments;
  return useMemo(() => {
    const all = [...brought.values(), ...(register ?? []).filter(({ name }) => !brought.has(name))];
    const fits = (instrument: Instrument) => (instrument.kind === characteristic?.instrument ? 0 : 1);
    return all.sort((a, b) => fits(a) - fits(b));
  }, [brought, register, characteristic]);
};

export const InstrumentChoice = ({
  instruments,
  chosen,
  onChange,
}: {
  readonly instruments: readonly Instrument[];
  readonly chosen: Instrument | undefined;
  readonly onChange: (name: string) => void;
}) => {
  const act = useAct();
  const [zero, setZero] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const noteZero = () => {
    const typed = readEntry(zero, 'mm');
    if (typed.kind === 'refused') return setRefusal(typed.refusal);
    if (!chosen) return;
    const refused = act(bringInstrument, { instrument: { ...chosen, zero: typed.value } });
    setRefusal(refused);
    if (!refused) setZero('');
  };
  return (
    <div className="column">
      <Choice
        label="Instrument in the hand"
        value={chosen?.name ?? ''}
        onChange={onChange}
        of={[
          ...(chosen ? [] : [{ value: '', words: 'choose one …' }]),
          ...instruments.map((one) => ({ value: one.name, words: words(one) })),
        ]}
        hint={
          chosen === undefined
            ? 'No instrument is on the register yet.'
            : chosen.zero === undefined
              ? 'Its zero was never checked.'
              : `On its zero or master it showed ${typedText(chosen.zero)}.`
        }
      />
      <details>
        <summary>Note a zero check</summary>
        <div className="row">
          <Field
            className="grow"
            label="It shows on its zero or master"
            value={zero}
            onChange={setZero}
            hint="How far it reads too high, in mm: +0.002 or −0.001."
          />
          <Button onPress={noteZero}>Note it</Button>
        </div>
        <Refused refusal={refusal} />
      </details>
    </div>
  );
};
