/** @module The run-in: the step in hand, its gauges, alarms, faults, what is passed and what is left, trends. */
import { useMemo } from 'react';
import { runTrend } from '../../drawing/run-trend.ts';
import type { RunIn } from '../../engine/run-in.ts';
import { gaugeTitle } from '../../job/run/alarm.ts';
import type { Attempt } from '../../job/run/attempt.ts';
import { attemptWords, readingWords } from '../../job/run/attempt-words.ts';
import { type RunInStanding, runInStanding, type StepStanding } from '../../job/run/run-in-standing.ts';
import { gaugesWanted, pointTitle } from '../../job/run/step-lacking.ts';
import { trendsOf } from '../../job/run/trends.ts';
import { typedText } from '../../quantity/typed.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { StrikeOut } from '../measure/strike-out.tsx';
import { Aside } from '../shell/aside.tsx';
import { AlarmWords } from './alarms-shown.tsx';
import { BeginStep } from './begin-step.tsx';
import { FaultForm, Faults } from './fault-form.tsx';
import { GaugeEntry } from './gauge-entry.tsx';
import { strikeOutRunReading } from './run-actions.ts';
import { useMinutes } from './use-minutes.ts';

/** What to set, in figures that are read from where the throttle is. */
const ToSet = ({ next }: { readonly next: StepStanding }) => (
  <dl className="to-set">
    <div>
      <dt>Speed</dt>
      <dd>{typedText(next.step.speed)}</dd>
    </div>
    <div>
      <dt>Load</dt>
      <dd>{typedText(next.step.load)}</dd>
    </div>
    <div>
      <dt>Minutes</dt>
      <dd>{next.step.minutes}</dd>
    </div>
  </dl>
);

const Clock = ({ attempt, runIn }: { readonly attempt: Attempt; readonly runIn: RunIn }) => {
  const minutes = useMinutes(attempt.begun.at);
  const last = attempt.readings.findLast(({ struckOut }) => struckOut === undefined)?.told.minute ?? 0;
  const every = runIn.readEvery;
  return (
    <>
      <p>
        <strong>{Math.floor(minutes)} min by the clock</strong>; {Number(attempt.minutes.toFixed(1))} min
        proved by readings, {Number(attempt.left.toFixed(1))} min to go
        {every === undefined ? '' : `; a reading every ${every} min, the last at minute ${last}`}.
      </p>
      <GaugeEntry runIn={runIn} attempt={attempt} minute={minutes} key={attempt.begun.id} />
    </>
  );
};

/** Alarms stand until the fault is noted, or the reading struck out where a gauge was misread. */
const Answering = ({ standing }: { readonly standing: RunInStanding }) => {
  const alarmed = standing.inHand?.readings.findLast(
    ({ alarms, struckOut }) => alarms.length > 0 && struckOut === undefined,
  );
  return (
    <section className="column" aria-label="Answer the alarm">
      <AlarmWords alarms={standing.alarms} />
      <h3>What was found</h3>
      <FaultForm alarmed />
      {alarmed === undefined ? null : (
        <>
          <h3>Or the gauge was misread</h3>
          <StrikeOut reading={alarmed.id} by={strikeOutRunReading} />
        </>
      )}
    </section>
  );
};

const StepList = ({ standing }: { readonly standing: RunInStanding }) => (
  <ol className="steps" aria-label="Steps of the run-in">
    {standing.steps.map(({ number, step, standing: stands, attempt }) => (
      <li key={number} data-run-step={stands} aria-current={stands === 'in hand' ? 'step' : undefined}>
        <div className="what">
          <strong>
            {number}. {step.title}
          </strong>
          <div className="hint">
            {typedText(step.speed)}, {typedText(step.load)}, {step.minutes} min
          </div>
        </div>
        <span className={stands === 'passed' ? 'verdict within' : ''}>
          {stands === 'in hand' ? attemptWords(attempt as Attempt) : stands}
        </span>
      </li>
    ))}
  </ol>
);

/** A reading as one line of words: a table of so many gauges would run off a tablet. */
const Readings = ({ attempts }: { readonly attempts: readonly Attempt[] }) => (
  <>
    <h3>What the gauges showed</h3>
    <ol className="steps" aria-label="What the gauges showed">
      {attempts.flatMap((attempt) =>
        attempt.readings.map((reading) => (
          <li key={reading.id}>
            <div className="what">
              <strong>
                Step {attempt.number}, minute {reading.told.minute}
                {attempt.ended === undefined ? '' : ' (counts no longer)'}
              </strong>
              <div>
                {reading.judged.gauges.map((one) => `${gaugeTitle(one)} ${typedText(one.typed)}`).join(', ')}
              </div>
              <div className="hint">
                {[
                  ...(reading.told.smoke === undefined ? [] : [`smoke ${reading.told.smoke}`]),
                  ...(reading.told.leaks === undefined ? [] : [`leaks ${reading.told.leaks}`]),
                  ...(reading.told.note === '' ? [] : [reading.told.note]),
                  reading.by,
                ].join('; ')}
              </div>
            </div>
            <span>{readingWords(reading)}</span>
          </li>
        )),
      )}
    </ol>
  </>
);

const Trends = ({ attempts }: { readonly attempts: readonly Attempt[] }) => {
  const job = useJob();
  const trends = useMemo(() => trendsOf(job, attempts), [job, attempts]);
  return (
    <ul className="zones">
      {trends.map((trend) => (
        <li key={trend.gauge.name}>
          <Drawing drawing={runTrend(trend)} />
        </li>
      ))}
    </ul>
  );
};

export const RunInPart = ({ runIn }: { readonly runIn: RunIn }) => {
  const job = useJob();
  const standing = useMemo(() => runInStanding(job), [job]);
  const { next, inHand, alarms, openFaults, attempts } = standing;
  const stopped = alarms.length > 0 || openFaults.some(({ stopsRun }) => stopsRun);
  const running = inHand !== undefined && inHand.number === next?.number;
  return (
    <section className="part column" aria-label="Run-in">
      <h2>Run-in</h2>
      {next === undefined ? (
        <p className="verdict within">every step of the run-in is passed</p>
      ) : (
        <>
          <h3 className="step-title">
            Step {next.number} of {runIn.steps.length}: {next.step.title}
          </h3>
          <ToSet next={next} />
          {running ? null : (
            <p>
              To be read: {gaugesWanted(next.step, job.sheet.engine.cylinders).map(pointTitle).join(', ')}.
            </p>
          )}
        </>
      )}
      {alarms.length > 0 ? <Answering standing={standing} /> : null}
      <Faults />
      {job.handedOver !== undefined || next === undefined || stopped ? null : running ? (
        <>
          <p>Until it is passed:</p>
          <ul>
            {inHand.lacking.map((says) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
          <Clock attempt={inHand} runIn={runIn} />
        </>
      ) : (
        <BeginStep next={next} standing={standing} />
      )}
      {alarms.length > 0 || job.handedOver !== undefined ? null : (
        <Aside words="A fault was found: note it">
          <FaultForm alarmed={false} />
        </Aside>
      )}
      <StepList standing={standing} />
      {attempts.some(({ readings }) => readings.length > 0) ? (
        <>
          <Trends attempts={attempts} />
          <Readings attempts={attempts} />
        </>
      ) : null}
    </section>
  );
};
