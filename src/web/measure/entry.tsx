/** @module Entry of one number at a time. Enter takes it: from keys, a number pad, a foot switch or a gauge that types. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { Bounds } from '../../engine/engine-type.ts';
import { bareFigure, figureText, quantityOf, type ShownIn, shownIn } from '../../engine/shown-in.ts';
import { cellTitle } from '../../job/cell-title.ts';
import type { OpenJob } from '../../job/job.ts';
import { formerSizeAt } from '../../measure/former.ts';
import { limitsOf } from '../../measure/limits.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { withMasters } from '../../measure/with-masters.ts';
import { type Refusal, refusalText } from '../../quantity/refusal.ts';
import { useAct } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { OneNumber } from '../shell/one-number.tsx';
import { InstrumentCautions } from './instrument-cautions.tsx';
import { InstrumentChoice, useInstrumentsFor } from './instrument-choice.tsx';
import { bringInstrument, readEntry, takeReading } from './measure-actions.ts';

const span = ({ least, greatest }: Bounds, shown: ShownIn): string =>
  least === undefined
    ? greatest === undefined
      ? 'no limits given'
      : `at most ${figureText(greatest, shown)}`
    : greatest === undefined
      ? `at least ${figureText(least, shown)}`
      : `${bareFigure(least, shown)} to ${figureText(greatest, shown)}`;

/** Does one thing after another, as far as none is refused. */
const firstRefused = <T,>(
  things: readonly T[],
  work: (thing: T) => Refusal | undefined,
): Refusal | undefined => {
  for (const thing of things) {
    const refused = work(thing);
    if (refused) return refused;
  }
  return undefined;
};

export const Entry = ({
  job,
  cell,
  turn,
  onTaken,
}: {
  readonly job: OpenJob;
  readonly cell: Cell;
  /** Changes when somebody goes to a cell: the focus goes there too. */
  readonly turn: number;
  readonly onTaken: (cell: Cell) => void;
}) => {
  const { engine } = job.sheet;
  const characteristic = engine.characteristics.get(cell.characteristic);
  const shown = shownIn(characteristic);
  const { unit } = shown;
  const act = useAct();
  const [text, setText] = useState('');
  const [temperature, setTemperature] = useState('');
  const [wrong, setWrong] = useState<string>();
  const [picked, setPicked] = useState<Readonly<Record<string, string>>>({});
  const input = useRef<HTMLInputElement>(null);
  const instruments = useInstrumentsFor(job.sheet, cell.characteristic);
  const chosen = instruments.find(({ name }) => name === picked[cell.characteristic]) ?? instruments[0];
  const key = cellKey(cell);

  // Whoever chose another cell means to read it now.
  useEffect(() => {
    if (turn > 0) input.current?.focus({ preventScroll: true });
  }, [turn]);

  const take = (event: FormEvent) => {
    event.preventDefault();
    const typed = readEntry(text, unit, quantityOf(characteristic));
    if (typed.kind === 'refused') return setWrong(refusalText(typed.refusal));
    if (!chosen) return setWrong('no instrument is chosen: choose the one in your hand');
    const degrees = temperature.trim();
    const bring = job.sheet.instruments.has(chosen.name)
      ? []
      : withMasters(chosen, instruments, job.sheet.instruments);
    const refused =
      firstRefused(bring, (instrument) => act(bringInstrument, { instrument })) ??
      act(takeReading, {
        cell,
        typed: typed.value,
        instrument: chosen.name,
        ...(degrees === '' ? {} : { temperature: { text: degrees, unit: '°C' } }),
      });
    if (refused) return setWrong(refusalText(refused));
    setText('');
    setWrong(undefined);
    onTaken(cell);
  };

  const limits = limitsOf(job.sheet, cell.characteristic, cell.place);
  const before = job.sheet.readings.get(key)?.at(-1);
  const left = formerSizeAt(job.sheet, cell);
  return (
    <section className="entry column" aria-label="Read one size">
      <OneNumber
        label={cellTitle(engine, cell)}
        hint={
          <>
            in {unit} unless you type another unit
            {limits
              ? `; ${job.sheet.against === 'as made' ? 'ordered' : 'may go back'} ${span(limits.goesBack, shown)}`
              : ''}
            {left ? `; left at ${figureText(left.size, shown)} by ${job.sheet.former?.number}` : ''}
            {before ? `; read before: ${before.typed.text} ${before.typed.unit}` : ''}
          </>
        }
        text={text}
        onText={(typed) => {
          setText(typed);
          setWrong(undefined);
        }}
        wrong={wrong}
        button={takeReading.label}
        onTake={take}
        inputRef={input}
      />
      <InstrumentCautions instrument={chosen} sheet={job.sheet} />
      <Aside
        words={`In the hand: ${chosen?.name ?? 'no instrument chosen'}; part at ${temperature.trim() || '20'} °C (change)`}
      >
        <div className="row" style={{ alignItems: 'start' }}>
          <div className="grow">
            <InstrumentChoice
              instruments={instruments}
              chosen={chosen}
              onChange={(name) => setPicked({ ...picked, [cell.characteristic]: name })}
            />
          </div>
          <Field
            label="Temperature of the part, °C"
            value={temperature}
            onChange={setTemperature}
            hint="20 is taken where none is given"
            numeric
          />
        </div>
      </Aside>
    </section>
  );
};
