/** @module The former overhaul that this job goes by, or one that it could. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { fittingTo, formerWords } from '../../measure/former.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Refused } from '../shell/refused.tsx';
import { bringFormer, useFormers } from './former-proposal.tsx';

export const FormerOfJob = () => {
  const job = useJob();
  const act = useAct();
  const [refusal, setRefusal] = useState<Refusal>();
  const { former, engine } = job.sheet;
  const [known] = useFormers(engine.title, job.booked.plate, job.head.event?.job ?? '');
  const proposed = former === undefined && bringFormer.enabled(job) ? known : undefined;
  if (!former && !proposed) return null;
  return (
    <section className="part" aria-label="Former overhaul">
      <h2>Former overhaul</h2>
      {former ? <p>It brings its sizes of {formerWords(former)}.</p> : null}
      {proposed ? (
        <>
          <p>This engine was here before: {formerWords(proposed)}.</p>
          <div>
            <Button onPress={() => setRefusal(act(bringFormer, fittingTo(proposed, engine)))}>
              {bringFormer.label}
            </Button>
          </div>
        </>
      ) : null}
      <Refused refusal={refusal} />
    </section>
  );
};
