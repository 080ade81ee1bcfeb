/** @module Joints that an operation tightens: which is in hand, its stage bolt by bolt, and how the others stand. */
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Operation } from '../../engine/engine-type.ts';
import { stageCautions } from '../../job/tighten/cautions.ts';
import { jointKey } from '../../job/tighten/joint-key.ts';
import { type Tightening, tighteningsOf } from '../../job/tighten/tightening.ts';
import { jointWords, stageWords } from '../../job/tighten/words.ts';
import { useRegister } from '../instruments/register-shelf.ts';
import { useJob } from '../journal/use-desk.tsx';
import { Choice } from '../shell/field.tsx';
import { type PulledWith, pulledAsAsked } from './pulled-with.ts';
import { StageInHand } from './stage-in-hand.tsx';

const keyOf = ({ operation, fastener, place }: Tightening): string =>
  jointKey({ operation: operation.name, fastener: fastener.name, place: place.id });

const standsWords = (one: Tightening): string =>
  one.next === undefined || one.stages.every(({ done }) => done.length === 0)
    ? 'not begun'
    : stageWords(one, one.next.stage);

const NotedCautions = ({ joints }: { readonly joints: readonly Tightening[] }) => {
  const job = useJob();
  const register = useRegister().data;
  const cautions = joints.flatMap((one) =>
    one.stages.flatMap((stage, at) =>
      stageCautions(job, stage, register).map((says) => `${jointWords(one)}, stage ${at + 1}: ${says}`),
    ),
  );
  return cautions.map((says) => (
    <p key={says} className="caution">
      <strong>Caution:</strong> {says}.
    </p>
  ));
};

export const TighteningPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const part = useRef<HTMLElement>(null);
  const [chosen, setChosen] = useState('');
  const [forms, setForms] = useState<Readonly<Record<string, PulledWith>>>({});
  const [noted, setNoted] = useState(0);
  const joints = useMemo(() => tighteningsOf(job, operation), [job, operation]);
  // A foot switch types Enter: it goes on with the next stage or joint, and after the last with what comes below.
  useEffect(() => {
    if (noted === 0) return;
    const go = part.current?.querySelector<HTMLElement>('button.tight');
    (go ?? document.querySelector<HTMLElement>('.sign button.first'))?.focus();
  }, [noted]);
  if (joints.length === 0) return null;
  const left = joints.filter(({ next }) => next !== undefined);
  const inHand = left.find((one) => keyOf(one) === chosen) ?? left[0];
  const { next, fastener } = inHand ?? {};
  return (
    <section className="part tightening" aria-label="Tightening" ref={part}>
      <h3>Tightening, stage by stage</h3>
      {left.length > 1 && inHand ? (
        <Choice
          label="Joint in hand"
          value={keyOf(inHand)}
          onChange={setChosen}
          of={left.map((one) => ({ value: keyOf(one), words: `${jointWords(one)}: ${standsWords(one)}` }))}
          hint={`${left.length} of ${joints.length} are left`}
        />
      ) : null}
      {inHand && next && fastener && !job.done.has(operation.name) ? (
        <>
          <h4>{jointWords(inHand)}</h4>
          <StageInHand
            key={`${keyOf(inHand)} ${next.stage}`}
            tightening={inHand}
            at={next.stage}
            ticksKey={`endfloat ticked ${job.head.event?.job ?? ''} ${keyOf(inHand)} ${next.stage}`}
            form={forms[fastener.name] ?? pulledAsAsked(fastener)}
            onForm={(form) => setForms({ ...forms, [fastener.name]: form })}
            onNoted={() => setNoted(noted + 1)}
          />
        </>
      ) : (
        <p>
          ✓ {joints.length === 1 ? 'The joint is' : `All ${joints.length} joints are`} tight, every stage
          noted.
        </p>
      )}
      <NotedCautions joints={joints} />
    </section>
  );
};
