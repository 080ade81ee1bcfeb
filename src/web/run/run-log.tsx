/** @module A plain log of running, where the engine type has no run-in steps: what was set, for how long, what the gauges showed. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { FaultForm, Faults } from './fault-form.tsx';
import { blankRun, logRunStep, type RunForm, runStep } from './log-run-step.ts';

const fields: readonly { readonly name: keyof RunForm; readonly label: string; readonly hint: string }[] = [
  { name: 'speed', label: 'Speed', hint: 'rpm' },
  { name: 'load', label: 'Load', hint: '% of full load, or N·m on the brake' },
  { name: 'minutes', label: 'Minutes', hint: 'how long it ran so' },
  { name: 'oilPressure', label: 'Oil pressure', hint: 'bar; may stay empty' },
  { name: 'waterTemperature', label: 'Water temperature', hint: '°C; may stay empty' },
  { name: 'note', label: 'Note', hint: 'smoke, leaks, sounds' },
];

const RunLog = () => {
  const { runLog } = useJob();
  if (runLog.length === 0) return <p>No step logged yet.</p>;
  return (
    <div className="scroll">
      <table>
        <caption>Run log</caption>
        <thead>
          <tr>
            {['time', 'speed', 'load', 'minutes', 'oil', 'water', 'note', 'by'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {runLog.map((step) => (
            <tr key={step.at}>
              <td className="figure">{step.at.slice(11, 16)}</td>
              <td className="figure">{typedText(step.speed)}</td>
              <td className="figure">{typedText(step.load)}</td>
              <td className="figure">{step.minutes}</td>
              <td className="figure">{step.oilPressure ? typedText(step.oilPressure) : '—'}</td>
              <td className="figure">{step.waterTemperature ? typedText(step.waterTemperature) : '—'}</td>
              <td>{step.note}</td>
              <td>{step.by}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

export const PlainRunLog = () => {
  const job = useJob();
  const act = useAct();
  const [form, setForm] = useState(blankRun);
  const [refusal, setRefusal] = useState<Refusal>();
  const log = (event: FormEvent) => {
    event.preventDefault();
    const step = runStep(form);
    const refused = step.kind === 'refused' ? step.refusal : act(logRunStep, step.value);
    setRefusal(refused);
    if (refused) return;
    announce('Step logged.');
    setForm(blankRun);
  };
  return (
    <section className="part" aria-label="Run log">
      <h2>Run-in</h2>
      <RunLog />
      <Faults />
      {logRunStep.enabled(job) ? (
        <>
          <form className="column" onSubmit={log}>
            <div className="two-up">
              {fields.map(({ name, label, hint }) => (
                <Field
                  key={name}
                  label={label}
                  hint={hint}
                  value={form[name]}
                  onChange={(value) => setForm({ ...form, [name]: value })}
                />
              ))}
            </div>
            <Refused refusal={refusal} />
            <div>
              <Button type="submit" className="first">
                {logRunStep.label}
              </Button>
            </div>
          </form>
          <Aside words="A fault was found: note it">
            <FaultForm alarmed={false} />
          </Aside>
        </>
      ) : null}
    </section>
  );
};
