/** @module By which chances of slips the readings of this job are doubted, and whether the workshop has others by now. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { chanceWords, knownSlips, priorsWith } from '../../measure/slips/priors.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { slipChancesNow } from '../../register/slip-chance.ts';
import { useRegister } from '../instruments/register-shelf.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Refused } from '../shell/refused.tsx';
import { bringSlipChances } from './bring-slip-chances.ts';

export const SlipsOfJob = () => {
  const job = useJob();
  const act = useAct();
  const register = useRegister().data;
  const [refusal, setRefusal] = useState<Refusal>();
  const chances = register && slipChancesNow(register);
  const here = priorsWith(job.slipChances);
  const shop = chances && priorsWith(chances);
  const own = knownSlips.filter(({ name, chance }) => here[name] !== chance);
  const changed = shop ? knownSlips.filter(({ name }) => shop[name] !== here[name]) : [];
  return (
    <section className="part" aria-label="Slips looked for">
      <h2>Slips looked for</h2>
      {own.length === 0 ? <p>Each as often as it usually happens.</p> : null}
      {own.map((slip) => (
        <p key={slip.name}>
          {slip.name}: {chanceWords(slip, here[slip.name] ?? 0)}, usually {chanceWords(slip, slip.chance)}
        </p>
      ))}
      {changed.map((slip) => (
        <p key={slip.name} className="note">
          By now the workshop has {slip.name} {chanceWords(slip, shop?.[slip.name] ?? 0)}.
        </p>
      ))}
      <div className="row">
        {changed.length > 0 && chances && bringSlipChances.enabled(job) ? (
          <Button onPress={() => setRefusal(act(bringSlipChances, { chances }))}>
            {bringSlipChances.label}
          </Button>
        ) : null}
        <Link href="/slips" className="button">
          The workshop’s list
        </Link>
      </div>
      <Refused refusal={refusal} />
    </section>
  );
};
