/** @module A reading of all gauges, one field at a time: Enter takes a figure and goes on; its verdict stands beside its limit at once. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { gauges } from '../../engine/gauge.ts';
import type { RunIn } from '../../engine/run-in.ts';
import { alarmsIn } from '../../job/run/alarm.ts';
import type { Attempt } from '../../job/run/attempt.ts';
import { judgeGauges, limitText } from '../../job/run/judged-reading.ts';
import { type GaugePoint, gaugesWanted, pointsOf, pointTitle } from '../../job/run/step-lacking.ts';
import type { GaugeReading, Smoke } from '../../job/run-fact.ts';
import { type Refusal, refusalText } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Choice, Field } from '../shell/field.tsx';
import { OneNumber } from '../shell/one-number.tsx';
import { Refused } from '../shell/refused.tsx';
import { AlarmWords } from './alarms-shown.tsx';
import { readGauge, takeRunReading, unitOfGauge } from './run-actions.ts';

const keyOf = ({ gauge, cylinder }: GaugePoint): string => `${gauge.name} ${cylinder ?? ''}`;

/** What must be read first, in the order of the gauges, then the rest of the log. */
const pointsToRead = (attempt: Attempt, cylinders: number): readonly GaugePoint[] => {
  const wanted = gaugesWanted(attempt.step, cylinders);
  const names = new Set(wanted.map(({ gauge }) => gauge.name));
  return [
    ...wanted,
    ...gauges.filter(({ name }) => !names.has(name)).flatMap((gauge) => pointsOf(gauge, cylinders)),
  ];
};

const smokes = [
  { value: '', words: 'not looked' },
  ...(['clear', 'black', 'blue', 'white'] as const).map((word) => ({ value: word, words: word })),
];

type Taken = ReadonlyMap<string, GaugeReading>;

export const GaugeEntry = ({
  runIn,
  attempt,
  minute: clock,
}: {
  readonly runIn: RunIn;
  readonly attempt: Attempt;
  /** By the clock, since the step was begun. */
  readonly minute: number;
}) => {
  const act = useAct();
  const { cylinders } = useJob().sheet.engine;
  const points = pointsToRead(attempt, cylinders);
  const wanted = gaugesWanted(attempt.step, cylinders).length;
  const [taken, setTaken] = useState<Taken>(new Map());
  const [at, setAt] = useState(0);
  const [text, setText] = useState('');
  const [minute, setMinute] = useState('');
  const [smoke, setSmoke] = useState('');
  const [leaks, setLeaks] = useState('');
  const [note, setNote] = useState('');
  const [wrong, setWrong] = useState<string>();
  const [refusal, setRefusal] = useState<Refusal>();
  const [turn, setTurn] = useState(0);
  const input = useRef<HTMLInputElement>(null);
  const finish = useRef<HTMLButtonElement>(null);

  useEffect(() => {
    if (turn === 0) return;
    (at < points.length ? input.current : finish.current)?.focus({ preventScroll: true });
  }, [turn, at, points.length]);

  const point = points[at];
  const judged = judgeGauges(runIn, attempt.step, [...taken.values()]);
  const alarms = alarmsIn(judged);
  const goTo = (index: number) => {
    setAt(index);
    setText('');
    setWrong(undefined);
    setTurn(turn + 1);
  };
  const take = (event: FormEvent) => {
    event.preventDefault();
    if (point === undefined) return;
    if (text.trim() === '') {
      if (at < wanted) return setWrong('read the gauge, or note the reading as it is');
      return goTo(at + 1);
    }
    const typed = readGauge(text, unitOfGauge(attempt.step, point.gauge), point.gauge);
    if (typed.kind === 'refused') return setWrong(refusalText(typed.refusal));
    const reading: GaugeReading = {
      gauge: point.gauge.name,
      typed: typed.value,
      ...(point.cylinder !== undefined && { cylinder: point.cylinder }),
    };
    const now = new Map(taken).set(keyOf(point), reading);
    setTaken(now);
    const rung = alarmsIn(judgeGauges(runIn, attempt.step, [...now.values()]));
    const [alarm] = rung.filter(({ says }) => !alarms.some((one) => one.says === says));
    announce(
      alarm ? `Alarm: ${alarm.says}. ${alarm.remedy}.` : `${pointTitle(point)} ${typedText(typed.value)}.`,
    );
    goTo(at + 1);
  };
  const noteReading = () => {
    const refused = act(takeRunReading, {
      step: attempt.number,
      minute: minute.trim() === '' ? Number(clock.toFixed(1)) : Number(minute.replace(',', '.')),
      gauges: [...taken.values()],
      note: note.trim(),
      ...(smoke !== '' && { smoke: smoke as Smoke }),
      ...(leaks.trim() !== '' && { leaks: leaks.trim() }),
    });
    setRefusal(refused);
    if (refused) return;
    announce('Reading noted.');
    setTaken(new Map());
    setMinute('');
    setNote('');
    goTo(0);
  };
  return (
    <section className="entry column" aria-label="Read the gauges">
      <OneNumber
        label={point === undefined ? 'All gauges are read' : pointTitle(point)}
        hint={
          point === undefined
            ? 'note the reading, or choose a gauge below to read it again'
            : `in ${unitOfGauge(attempt.step, point.gauge)} unless you type another unit; ${limitText(runIn, attempt.step, point.gauge) || 'no limit'}${at < wanted ? '' : '; may stay empty'}`
        }
        text={text}
        onText={(typed) => {
          setText(typed);
          setWrong(undefined);
        }}
        wrong={wrong}
        button="Next"
        onTake={take}
        inputRef={input}
        disabled={point === undefined}
      />
      <AlarmWords alarms={alarms} />
      <ul className="gauges" aria-label="Gauges">
        {points.map((one, index) => {
          const key = keyOf(one);
          const found = judged.gauges.find(
            ({ gauge, cylinder }) => gauge === one.gauge.name && cylinder === one.cylinder,
          );
          return (
            <li key={key}>
              <Button
                className="cell-button"
                aria-current={index === at ? 'true' : 'false'}
                onPress={() => goTo(index)}
              >
                <span>{pointTitle(one)}</span>
                <span className="figure">{found === undefined ? '—' : typedText(found.typed)}</span>
                {found === undefined ? (
                  <span className="hint">{limitText(runIn, attempt.step, one.gauge)}</span>
                ) : (
                  <span className={`verdict ${found.verdict.replaceAll(' ', '-')}`}>
                    {found.verdict === 'no limit' ? 'noted' : found.verdict}
                    {found.why === undefined ? '' : `: ${found.why}`}
                  </span>
                )}
              </Button>
            </li>
          );
        })}
      </ul>
      <div className="two-up">
        <Field
          label="Minute of the step"
          value={minute}
          onChange={setMinute}
          hint={`${clock.toFixed(1)} by the clock where it stays empty`}
          numeric
        />
        <Choice label="Smoke" value={smoke} onChange={setSmoke} of={smokes} />
        <Field label="Leaks" value={leaks} onChange={setLeaks} hint="where; or none" />
        <Field label="Note" value={note} onChange={setNote} hint="sounds, smell, beat" />
      </div>
      <Refused refusal={refusal} />
      <div>
        <Button className="first" ref={finish} onPress={noteReading} isDisabled={taken.size === 0}>
          {takeRunReading.label}
        </Button>
      </div>
    </section>
  );
};
