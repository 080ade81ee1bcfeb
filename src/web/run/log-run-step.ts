/** @module One step of the run-in, from what stands in the form. */
import type { Request } from '../../job/command.ts';
import { type Answer, answer, type Refusal } from '../../quantity/refusal.ts';
import { readTyped, type Typed } from '../../quantity/typed.ts';
import type { Action } from '../shell/action.ts';

type RunStep = Omit<Extract<Request, { kind: 'log run step' }>, 'kind'>;

export interface RunForm {
  readonly speed: string;
  readonly load: string;
  readonly minutes: string;
  readonly oilPressure: string;
  readonly waterTemperature: string;
  readonly note: string;
}

export const blankRun: RunForm = {
  speed: '',
  load: '',
  minutes: '',
  oilPressure: '',
  waterTemperature: '',
  note: '',
};

export const logRunStep: Action<RunStep> = {
  name: 'log-run-step',
  label: 'Log this step',
  enabled: (job) => job.handedOver === undefined,
  request: (step) => ({ kind: 'log run step', ...step }),
};

const withUnit = (text: string, unit: string): string => (/[a-z%°]/i.test(text) ? text : `${text} ${unit}`);

const named = (refusal: Refusal, where: string): Answer<never> => ({
  kind: 'refused',
  refusal: { ...refusal, where },
});

/** Load is the brake's torque where a unit of torque is typed, else a share of full load. */
const readLoad = (text: string): Answer<Typed> =>
  /[nl]/i.test(text) ? readTyped(text, 'torque') : readTyped(withUnit(text, '%'), 'ratio');

export const runStep = (form: RunForm): Answer<RunStep> => {
  const speed = readTyped(withUnit(form.speed, 'rpm'), 'speed');
  if (speed.kind === 'refused') return named(speed.refusal, 'speed');
  const load = readLoad(form.load);
  if (load.kind === 'refused') return named(load.refusal, 'load');
  const oil =
    form.oilPressure.trim() === '' ? undefined : readTyped(withUnit(form.oilPressure, 'bar'), 'pressure');
  if (oil?.kind === 'refused') return named(oil.refusal, 'oil pressure');
  const water =
    form.waterTemperature.trim() === ''
      ? undefined
      : readTyped(withUnit(form.waterTemperature, '°C'), 'temperature');
  if (water?.kind === 'refused') return named(water.refusal, 'water temperature');
  return answer({
    speed: speed.value,
    load: load.value,
    minutes: Number(form.minutes),
    note: form.note.trim(),
    ...(oil === undefined ? {} : { oilPressure: oil.value }),
    ...(water === undefined ? {} : { waterTemperature: water.value }),
  });
};
