/** @module May these chances of slips be brought to the job? */
import { type Trouble, trouble } from '../../journal/trouble.ts';
import { soundChance } from '../../measure/slips/priors.ts';
import type { RequestOf } from '../command.ts';

export const bringSlipChancesTrouble = ({ chances }: RequestOf<'bring slip chances'>): Trouble => {
  for (const [at, chance] of chances.entries()) {
    const sound = soundChance(chance);
    if (sound.kind === 'refused') return sound.refusal;
    if (chances.slice(0, at).some(({ slip }) => slip === chance.slip))
      return trouble('its chance is given twice', chance.slip, 'give it once');
  }
  return undefined;
};
