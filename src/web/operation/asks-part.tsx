/** @module What an operation asks before it is signed: as found, counts, looks, a second person. */
import { useEffect, useRef, useState } from 'react';
import type { Operation } from '../../engine/engine-type.ts';
import { askedOf } from '../../job/asked.ts';
import { useJob } from '../journal/use-desk.tsx';
import { OneAsk } from './one-ask.tsx';

export const AsksPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const list = useRef<HTMLUListElement>(null);
  const [answers, setAnswers] = useState(0);
  // Hands stay where they are: the next thing asked takes the keys, and after the last the signature does.
  useEffect(() => {
    if (answers === 0) return;
    const left = list.current?.querySelector<HTMLElement>('[data-answered="no"] input');
    (left ?? document.querySelector<HTMLElement>('.sign button.first'))?.focus();
  }, [answers]);
  const asked = askedOf(job, operation);
  if (asked.length === 0 || job.done.has(operation.name)) return null;
  return (
    <section className="part" aria-label="Asked before it is signed">
      <h3>Before it is signed</h3>
      <ul className="steps" ref={list}>
        {asked.map((one) => (
          <OneAsk
            key={`${one.ask.name} ${one.place ?? ''}`}
            operation={operation.name}
            asked={one}
            onAnswered={() => setAnswers(answers + 1)}
          />
        ))}
      </ul>
    </section>
  );
};
