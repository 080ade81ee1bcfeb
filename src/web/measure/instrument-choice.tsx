/** @module Which instrument is in the hand: those brought to the job first, then those on the workshop's register. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { kindOf } from '../../engine/instrument-kind.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { instrumentsFor } from '../../measure/instrument-for.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { useInstruments } from '../jobs/workshop-lists.ts';
import { useAct } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { bringInstrument, readEntry } from './measure-actions.ts';

const words = (instrument: Instrument): string =>
  `${instrument.name}, ${instrument.kind}, ${instrument.range.least.text} to ${typedText(instrument.range.greatest)}`;

/** Brought ones and the register's, those that suit first. */
export const useInstrumentsFor = (sheet: Sheet, characteristic: string): readonly Instrument[] => {
  const register = useInstruments().data;
  const { instruments } = sheet;
  const all = useMemo(
    () => [...instruments.values(), ...(register ?? []).filter(({ name }) => !instruments.has(name))],
    [instruments, register],
  );
  // Which one suits is settled when the hands turn to a characteristic, not at every reading of it.
  // The sheet is asked as it then stands.
  const [settled, setSettled] = useState<{
    readonly characteristic: string;
    readonly all: readonly Instrument[];
    readonly order: readonly Instrument[];
  }>({ characteristic: '', all, order: all });
  if (settled.characteristic === characteristic && settled.all === all) return settled.order;
  const order = instrumentsFor(sheet, characteristic, all);
  setSettled({ characteristic, all, order });
  return order;
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
    if (!chosen) return;
    const typed = readEntry(zero, chosen.resolution.unit, kindOf(chosen.kind).measures);
    if (typed.kind === 'refused') return setRefusal(typed.refusal);
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
      <Aside words="Note a zero check">
        <div className="row">
          <Field
            className="grow"
            label="It shows on its zero or master"
            value={zero}
            onChange={setZero}
            hint={`How far it reads too high, in ${chosen?.resolution.unit ?? 'mm'}: +0.002 or −0.001.`}
          />
          <Button onPress={noteZero}>Note it</Button>
        </div>
        <Refused refusal={refusal} />
      </Aside>
    </div>
  );
};
