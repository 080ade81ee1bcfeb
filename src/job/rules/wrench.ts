/** @module Can this wrench pull that torque? One that is overdue can: it is said, never refused. */
import { kindOf } from '../../engine/instrument-kind.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import { badFigure, type Trouble, trouble } from '../../journal/trouble.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { amountOf, typedText } from '../../quantity/typed.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import type { Tightening } from '../tighten/tightening.ts';
import { wrenchSetting } from '../tighten/wrench-setting.ts';

type Asked = RequestOf<'tighten stage'>;

const outOfRange = ({ name, range }: Instrument, setting: number, where: string): Trouble => {
  const least = amountOf(range.least, 'torque');
  const greatest = amountOf(range.greatest, 'torque');
  const within =
    (least.kind === 'refused' || setting >= least.value) &&
    (greatest.kind === 'refused' || setting <= greatest.value);
  return within
    ? undefined
    : trouble(
        `${name} goes from ${typedText(range.least)} to ${typedText(range.greatest)}, and is to be set to ${formatFigure(setting, 1)} N·m`,
        where,
        'take a wrench whose range holds the figure, and bring it to this job',
      );
};

export const wrenchTrouble = (
  job: OpenJob,
  { stages }: Tightening,
  { stage: at, wrench, adapter }: Asked,
  where: string,
): Trouble => {
  const stage = stages[at]?.stage;
  const lengths =
    badFigure(adapter?.wrench, 'length', where, { above: 0 }) ??
    badFigure(adapter?.adapter, 'length', where, { from: 0 }) ??
    badFigure(adapter?.angle, 'angle', where, { from: 0 });
  if (lengths !== undefined || stage === undefined) return lengths;
  if (stage.kind === 'angle')
    return adapter === undefined
      ? undefined
      : trouble('an adapter changes no angle', where, 'leave the adapter out');
  const setting = wrenchSetting(stage, adapter);
  if (setting.kind === 'refused') return { ...setting.refusal, where };
  if (wrench === undefined) return undefined;
  const instrument = job.sheet.instruments.get(wrench);
  if (instrument === undefined)
    return trouble(
      `${wrench} has not been brought to this job`,
      where,
      chooseName(
        wrench,
        [...job.sheet.instruments.values()]
          .filter(({ kind }) => kindOf(kind).measures === 'torque')
          .map(({ name }) => name),
      ),
    );
  return kindOf(instrument.kind).measures === 'torque'
    ? outOfRange(instrument, setting.value, where)
    : trouble(`${wrench} is no torque wrench: ${instrument.kind}`, where, 'name the wrench that was used');
};
