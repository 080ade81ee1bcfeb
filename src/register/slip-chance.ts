/** @module How often slips happen in this shop, as its register has it, and whether that may be changed so. */
import { blank, type Trouble, trouble } from '../journal/trouble.ts';
import { knownSlips, type SlipChance, soundChance } from '../measure/slips/priors.ts';
import type { RegisterRequest } from './command.ts';
import type { Register } from './register.ts';

/** Those that the shop has set otherwise than usually, in the order in which slips are listed. */
export const slipChancesNow = ({ slipChances }: Pick<Register, 'slipChances'>): readonly SlipChance[] =>
  knownSlips.flatMap(({ name }) => {
    const last = slipChances.findLast(({ fact }) => fact.slip === name)?.fact;
    return last?.kind === 'slip chance set' ? [{ slip: name, onceIn: last.onceIn }] : [];
  });

type Asked = Extract<RegisterRequest, { kind: 'set slip chance' | 'leave slip chance as usual' }>;

export const slipChanceTrouble = (register: Register, asked: Asked): Trouble => {
  const { slip, why } = asked;
  const onceIn = asked.kind === 'set slip chance' ? asked.onceIn : undefined;
  const sound = soundChance({ slip, onceIn: onceIn ?? 0 });
  if (sound.kind === 'refused') return sound.refusal;
  const now = slipChancesNow(register).find((one) => one.slip === slip);
  return now?.onceIn === onceIn
    ? trouble(
        onceIn === undefined ? 'it is as usual already' : 'it is set so already',
        slip,
        'nothing is left to do',
      )
    : blank(why, slip, 'write why');
};
