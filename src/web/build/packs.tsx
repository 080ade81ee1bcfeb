/** @module Shim packs of every pump: chosen, as found and fitted, each with its error in millimetres and degrees. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { errorWords, shimStack } from '../../drawing/shim-stack.ts';
import type { PackAgainstNeed } from '../../job/pack-against.ts';
import type { FittedAgainstNeed, Pump, PumpPacks } from '../../job/pumps.ts';
import { toDegrees } from '../../quantity/brand.ts';
import { type Refusal, refusalText } from '../../quantity/refusal.ts';
import type { Typed } from '../../quantity/typed.ts';
import { checkText } from '../../record/sections/spill-check.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';
import { fitPack } from './build-actions.ts';
import { CheckedWords } from './checked-words.tsx';

const typedShim = (thickness: number) => ({ text: String(Number(thickness.toFixed(4))), unit: 'mm' });

const against = (pack: PackAgainstNeed | FittedAgainstNeed): string => {
  const error =
    pack.error === undefined
      ? 'need not known yet'
      : errorWords({
          error: pack.error,
          ...(pack.timingError === undefined ? {} : { timingError: pack.timingError }),
        });
  const right =
    pack.withinTolerance === undefined
      ? ''
      : pack.withinTolerance
        ? ' ✓ within tolerance'
        : ' ✕ outside tolerance';
  return `${pack.thickness.toFixed(3)} mm, ${error}${right}`;
};

/** The pack that puts right what the second check showed, one press away. */
export const PutRight = ({
  pump: { title, putRight },
  onFit,
}: {
  readonly pump: Pump;
  readonly onFit: (shims: readonly Typed[]) => void;
}) => {
  const job = useJob();
  if (!putRight) return null;
  const shims = putRight.shims.map((shim) => shim.toFixed(2)).join(' + ');
  return (
    <div>
      <p>
        To put it right: {putRight.needed.toFixed(3)} mm; {shims} = {putRight.thickness.toFixed(3)} mm, then{' '}
        {errorWords(putRight)}
      </p>
      <Button
        className="first"
        isDisabled={!fitPack.enabled(job)}
        aria-label={`Fit the pack that puts it right: ${title}, ${shims}`}
        onPress={() => onFit(putRight.shims.map(typedShim))}
      >
        Fit the pack that puts it right
      </Button>
    </div>
  );
};

/** Fits a pack, and says so. */
export const useFitting = ({ place, title }: Pick<Pump, 'place' | 'title'>) => {
  const act = useAct();
  const [refusal, setRefusal] = useState<Refusal>();
  const fit = (shims: readonly Typed[]) => {
    const refused = act(fitPack, { place, shims });
    setRefusal(refused);
    if (!refused) announce(`Pack under ${title} fitted.`);
  };
  return { fit, refusal };
};

const OnePump = ({ pump }: { readonly pump: Pump }) => {
  const job = useJob();
  const [other, setOther] = useState('');
  const { fit: fitShims, refusal } = useFitting(pump);
  const { chosen, found, lost, beyond, fitted, check, putRight, needed, title } = pump;
  const drawing = useMemo(
    () =>
      chosen &&
      shimStack({
        title,
        shims: chosen.shims,
        needed: chosen.needed,
        error: chosen.error,
        timingError: chosen.timingError,
      }),
    [chosen, title],
  );
  return (
    <li data-pump={pump.place}>
      {drawing ? <Drawing drawing={drawing} /> : <h3>{title}</h3>}
      <p>Needed: {needed === undefined ? 'not known yet' : `${needed.toFixed(3)} mm`}</p>
      {pump.missing.map((words) => (
        <p key={words}>First {words}.</p>
      ))}
      {beyond ? (
        <div className="caution">
          <p>
            <strong>It {beyond.says}.</strong> Look at:
          </p>
          <ul>
            {beyond.lookAt.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </div>
      ) : null}
      {found ? <p>As found: {against(found)}</p> : null}
      {lost ? (
        <p>
          As found: not measured; {lost.says} ({lost.by})
        </p>
      ) : null}
      <p>
        <strong>Fitted: {fitted ? against(fitted) : 'nothing yet'}</strong>
      </p>
      {check ? (
        <p>
          Second check: {checkText(check)} <VerdictWords verdict={check.verdict} />
        </p>
      ) : null}
      {putRight ? <PutRight pump={pump} onFit={fitShims} /> : null}
      {chosen && !check ? (
        <Button
          className="first"
          isDisabled={!fitPack.enabled(job)}
          aria-label={`${fitPack.label}: ${title}, ${chosen.shims.map((shim) => shim.toFixed(2)).join(' + ')}`}
          onPress={() => fitShims(chosen.shims.map(typedShim))}
        >
          {fitPack.label}
        </Button>
      ) : null}
      <details>
        <summary>Another pack was fitted</summary>
        <Field
          label="Its shims, mm, with blanks between"
          value={other}
          onChange={setOther}
          hint="for example 0.50 0.30"
        />
        <Button
          onPress={() =>
            fitShims(
              other
                .trim()
                .split(/\s+/)
                .filter((text) => text !== '')
                .map((text) => ({ text, unit: 'mm' })),
            )
          }
        >
          Fit these
        </Button>
      </details>
      <Refused refusal={refusal} />
    </li>
  );
};

export const Packs = ({ packs }: { readonly packs: PumpPacks }) => {
  const { timing, set, pumps, checked } = packs;
  if (!timing) return null;
  return (
    <section className="part" aria-label="Shim packs">
      <h2>Shim packs</h2>
      <p>
        Shims sit {timing.shimsSit}; adding shims {timing.addingShims} the pump,{' '}
        {toDegrees(timing.rate).toFixed(2)}° of crank for each mm.{' '}
        {set.kind === 'answer'
          ? `Chosen for all pumps together: greatest error ${set.value.greatestError.toFixed(3)} mm, cylinder to cylinder ${set.value.spread.toFixed(3)} mm, ${set.value.shimsUsed} shims.`
          : `Not chosen yet: ${refusalText(set.refusal)}.`}
      </p>
      {set.kind === 'answer'
        ? set.value.notes.map((note) => (
            <p key={note} className="caution">
              {note}.
            </p>
          ))
        : null}
      {checked ? <CheckedWords checked={checked} /> : null}
      <ul className="stacks" style={{ margin: 0, padding: 0 }}>
        {pumps.map((pump) => (
          <OnePump key={pump.place} pump={pump} />
        ))}
      </ul>
    </section>
  );
};
