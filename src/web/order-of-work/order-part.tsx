/** @module The order of work that the fitter picks: fewest turns and tools, what can be done now, a way to a place, two side by side. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { shiftsChart } from '../../drawing/shifts-chart.ts';
import type { Operation } from '../../engine/engine-type.ts';
import { openNowOf, workLeft } from '../../job/work-left.ts';
import { durationText } from '../../quantity/moment.ts';
import { changesWords, sharedWords } from '../../work/order-words.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { Choice } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { OperationLinks } from './operation-links.tsx';
import type { OrderAsked, OrderFound } from './order-worker.ts';
import { ReachShown } from './reach-shown.tsx';
import { useOrder } from './use-order.ts';

type Phases = readonly Operation['phase'][];

const picks = [
  { value: 'now', words: 'what can be done now' },
  { value: 'fewest changes', words: 'fewest turns of the engine, then fewest tools fetched' },
  { value: 'side by side', words: 'two fitters side by side' },
  { value: 'reach', words: 'to reach a place' },
] as const;

type Pick = (typeof picks)[number]['value'];

const setUpWords = ({ stand, tools }: Operation): string =>
  [...(stand === undefined ? [] : [`engine ${stand}`]), ...tools]
    .map((word) => word.replaceAll('-', ' '))
    .join(', ');

const Now = ({ phases }: { readonly phases: Phases }) => {
  const job = useJob();
  const { open, waiting } = openNowOf(job, phases);
  return (
    <div className="column">
      {open.length === 0 ? <p>Nothing is open here now.</p> : <OperationLinks operations={open} />}
      {waiting.length === 0 ? null : (
        <>
          <h4>Waits for parts</h4>
          <OperationLinks
            operations={waiting.map(({ operation }) => operation)}
            beside={({ name }) =>
              `away: ${waiting
                .find(({ operation }) => operation.name === name)
                ?.away.map((kind) => job.sheet.engine.placeKinds.get(kind)?.title ?? kind)
                .join(', ')}`
            }
          />
        </>
      )}
    </div>
  );
};

const Found = ({ answer }: { readonly answer: OrderFound }) => {
  switch (answer.kind) {
    case 'fewest changes':
      return (
        <div className="column" role="status">
          <p>{changesWords(answer.found)}</p>
          <OperationLinks operations={answer.found.order} beside={setUpWords} />
        </div>
      );
    case 'side by side': {
      if (answer.found.kind === 'refused') return <Refused refusal={answer.found.refusal} />;
      const { shifts, minutes } = answer.found.value;
      const when = new Map(shifts.map((shift) => [shift.operation.name, shift]));
      return (
        <div className="column" role="status">
          <p>{sharedWords(answer.found.value)}</p>
          <Drawing drawing={shiftsChart(shifts, 2, minutes)} />
          <OperationLinks
            operations={shifts.map(({ operation }) => operation)}
            beside={({ name, people }) => {
              const shift = when.get(name);
              if (shift === undefined) return '';
              const who = `fitter ${shift.fitters.join(' and ')}`;
              const short = people > shift.fitters.length ? ', and another pair of hands' : '';
              return `${durationText(shift.from)} to ${durationText(shift.to)}, ${who}${short}`;
            }}
          />
        </div>
      );
    }
    default:
      return answer satisfies never;
  }
};

const Reckoned = ({ asked }: { readonly asked: OrderAsked }) => {
  const ordering = useOrder(asked);
  switch (ordering.kind) {
    case 'not asked':
      return null;
    case 'working':
      return (
        <p className="row">
          <span role="status">Looking for the best order …</span>
          <progress aria-label="Looking for the best order" />
          <Button onPress={ordering.stop}>Stop</Button>
        </p>
      );
    case 'stopped':
      return <p role="status">Stopped. The engine type’s own order stands above.</p>;
    case 'failed':
      return (
        <p className="refused" role="alert">
          No order was found: {ordering.says}. Work in the engine type’s order.
        </p>
      );
    case 'found':
      return <Found answer={ordering.answer} />;
    default:
      return ordering satisfies never;
  }
};

const Picked = ({ phases }: { readonly phases: Phases }) => {
  const job = useJob();
  const [pick, setPick] = useState<Pick>('now');
  const asked = useMemo((): OrderAsked | undefined => {
    const work = workLeft(job, phases);
    if (pick === 'fewest changes') return { kind: pick, work };
    return pick === 'side by side' ? { kind: pick, work, fitters: 2 } : undefined;
  }, [job, phases, pick]);
  return (
    <div className="column">
      <Choice label="Order of work" value={pick} onChange={(value) => setPick(value as Pick)} of={picks} />
      {pick === 'now' ? <Now phases={phases} /> : null}
      {pick === 'reach' ? <ReachShown /> : null}
      {asked === undefined ? null : <Reckoned asked={asked} />}
    </div>
  );
};

/** Folded away below the list: the engine type's order is there without asking. */
export const OrderPart = ({ phases }: { readonly phases: Phases }) => (
  <Aside words="In another order: what can be done now, fewest turns, to reach a place, two side by side">
    <Picked phases={phases} />
  </Aside>
);
