/** @module Setting and running: operations to sign, and the run-in step by step. */
import { runInStanding } from '../../job/run/run-in-standing.ts';
import { scopeOf } from '../../job/scope.ts';
import { useJob } from '../journal/use-desk.tsx';
import { OperationList, useOperations } from '../operation/operation-list.tsx';
import { OrderPart } from '../order-of-work/order-part.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { RunInPart } from './run-in-part.tsx';
import { PlainRunLog } from './run-log.tsx';
import { TightenAgain } from './tighten-again.tsx';

const phases = ['set', 'run'] as const;

export const RunSheet = () => {
  const job = useJob();
  const operations = useOperations(phases);
  const open = operations.find(({ standing }) => standing.kind === 'open');
  const signed = operations.filter(({ standing }) => standing.kind === 'done').length;
  const { runIn } = job.sheet.engine;
  const { steps, next, alarms, openFaults } = runInStanding(job);
  const [alarm] = alarms;
  const passed = steps.filter(({ standing }) => standing === 'passed').length;
  const running = steps.length === 0 ? job.runLog.length > 0 : next === undefined;
  // The run is next where everything before its operation is signed.
  const turn =
    next !== undefined &&
    (scopeOf(job).before.get(next.step.operation) ?? []).every((name) => job.done.has(name));
  return (
    <>
      <ThreeAnswers
        where={turn ? `running in, step ${next.number} of ${steps.length}` : 'setting and running'}
        now={
          alarm?.remedy ??
          (turn
            ? `run in: ${next.step.title}`
            : (open?.operation.title ?? (running ? 'go on to Hand over' : 'log the run-in')))
        }
        right={
          alarm === undefined
            ? `${signed} of ${operations.length} operations signed, ${steps.length === 0 ? `${job.runLog.length} steps logged` : `${passed} of ${steps.length} steps passed`}${openFaults.length === 0 ? '' : `, ${openFaults.length} faults not put right`}`
            : `✕ ${alarm.says}`
        }
      />
      <p className="caution">
        <strong>Caution:</strong> before the first start have the means at hand to shut the engine's air, keep
        clear of the flywheel's plane, and prove that the stop control ends injection.
      </p>
      {turn && runIn ? <RunInPart runIn={runIn} /> : null}
      <section className="part" aria-label="Operations">
        <h2>Setting and running</h2>
        <OperationList operations={operations} />
        <OrderPart phases={phases} />
      </section>
      <TightenAgain />
      {turn ? null : runIn && steps.length > 0 ? <RunInPart runIn={runIn} /> : <PlainRunLog />}
    </>
  );
};
