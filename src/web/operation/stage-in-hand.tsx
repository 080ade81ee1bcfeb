/** @module The stage of a joint in hand: its figure in big print, the joint filling in bolt by bolt, one button for each bolt. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { jointDrawing } from '../../drawing/joint.ts';
import { tightenStageTrouble } from '../../job/rules/tighten.ts';
import { stagePreload } from '../../job/tighten/preload.ts';
import type { Tightening } from '../../job/tighten/tightening.ts';
import { jointWords, stageText, threadWords, turnWords } from '../../job/tighten/words.ts';
import { wrenchSetting } from '../../job/tighten/wrench-setting.ts';
import { formatFigure } from '../../quantity/figure.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { tightenStage } from './operation-actions.ts';
import { OtherOrder } from './other-order.tsx';
import { type PulledWith, toldOf } from './pulled-with.ts';
import { NewOrUsed, PulledWithForm } from './pulled-with-form.tsx';
import { useTickedBolts } from './ticked-bolts.ts';

/** As many of the ticked bolts as still come next: others may have been noted elsewhere since. */
const stillNext = (ticked: readonly string[], left: readonly string[]): readonly string[] =>
  ticked.filter((bolt, at) => bolt === left[at]);

const pullWords = ({ fastener }: Tightening, at: Tightening['stages'][number]): string => {
  const pull = stagePreload(fastener, at.stage);
  const kN = (force: number) => formatFigure(force, 1);
  return pull === undefined
    ? ''
    : `For information: pulls each bolt with ${kN(pull.least)} to ${kN(pull.greatest)} kN; the proof load of its thread is ${kN(pull.proofLoad)} kN.`;
};

const orderWords = ({ joint }: Tightening): string => {
  if (joint.orderFrom === 'the maker') return 'In the order of the maker.';
  if (joint.bolts.length === 1) return '';
  return joint.orderFrom === 'counted'
    ? 'The engine type does not say how they stand: look up in the manual whether the order matters.'
    : `Order reckoned ${joint.orderFrom}; the maker's own goes before it.`;
};

/** By its turn, as it is drawn; its name too where that is another. */
const tightWords = ({ joint: { order } }: Tightening, bolt: string): string => {
  const turn = order.indexOf(bolt) + 1;
  const name = bolt === String(turn) ? '' : ` (bolt ${bolt})`;
  return `Tight: no. ${turn} of ${order.length}${name}`;
};

export const StageInHand = ({
  tightening,
  at,
  ticksKey,
  form,
  onForm,
  onNoted,
}: {
  readonly tightening: Tightening;
  /** Which stage, 0 and up. */
  readonly at: number;
  readonly ticksKey: string;
  readonly form: PulledWith;
  readonly onForm: (form: PulledWith) => void;
  readonly onNoted: () => void;
}) => {
  const job = useJob();
  const act = useAct();
  const [kept, setTicked] = useTickedBolts(ticksKey);
  const [refusal, setRefusal] = useState<Refusal>();
  const { operation, fastener, place, joint, again, stages } = tightening;
  const standing = stages[at];
  if (standing === undefined) return null;
  const { stage, done, left } = standing;
  const ticked = stillNext(kept, left);
  const next = left[ticked.length];
  const asksBolts =
    fastener.stretch !== undefined &&
    again === undefined &&
    at === 0 &&
    stages.every(({ noted }) => noted.every(({ boltsAre }) => boltsAre === undefined));
  const told = toldOf(form, stage.kind, asksBolts);
  const asked = { operation: operation.name, fastener: fastener.name, place: place.id, stage: at, note: '' };
  const setting =
    stage.kind === 'torque' && told.kind === 'answer' && told.value.adapter
      ? wrenchSetting(stage, told.value.adapter)
      : undefined;

  const note = (bolts: readonly string[], overruled?: { readonly by: string; readonly why: string }) => {
    if (told.kind === 'refused') return told.refusal;
    const refused = act(tightenStage, { ...asked, ...told.value, bolts, ...(overruled && { overruled }) });
    if (refused) return refused;
    announce(`${jointWords(tightening)}, stage ${at + 1}: noted.`);
    setTicked([]);
    onNoted();
    return undefined;
  };
  /** What the journal would refuse at the end of the stage is said before the bolt is pulled. */
  const tick = (bolt: string) => {
    const bolts = [...ticked, bolt];
    const trouble =
      told.kind === 'refused'
        ? told.refusal
        : tightenStageTrouble(job, { kind: 'tighten stage', ...asked, ...told.value, bolts });
    setRefusal(trouble);
    if (trouble) return;
    setTicked(bolts);
    const after = left[bolts.length];
    announce(
      `Bolt ${bolt} is tight. ${after === undefined ? 'All are: note the stage.' : `Bolt ${after} is next.`}`,
    );
  };

  return (
    <div className="stage" data-stage={at + 1}>
      <p className="stage-of">
        stage {at + 1} of {stages.length}
        {again ? ', tightened again' : ''}
      </p>
      <p className="stage-figure">{stageText(stage)}</p>
      <p className="stage-threads">
        {threadWords[fastener.threadState]}; {turnWords(fastener)}
      </p>
      {again ? (
        <p>
          {again.cold ? 'Once the engine is cold. ' : ''}
          {again.how}
        </p>
      ) : null}
      {asksBolts ? <NewOrUsed fastener={fastener} form={form} onChange={onForm} /> : null}
      {setting?.kind === 'answer' ? (
        <p>
          <strong>Set the wrench to {formatFigure(setting.value, 1)} N·m</strong>: the adapter does the rest.
        </p>
      ) : null}
      <Drawing
        drawing={jointDrawing({
          title: jointWords(tightening),
          bolts: joint.bolts,
          order: joint.order,
          done: [...done, ...ticked],
          ...(next !== undefined && { next }),
          hand: fastener.hand,
          ...(stage.kind === 'angle' && { angle: stage.angle }),
        })}
      />
      <div className="row">
        <Button
          className="first tight"
          isDisabled={!tightenStage.enabled(job)}
          onPress={() => (next === undefined ? setRefusal(note(ticked)) : tick(next))}
        >
          {next === undefined ? `Note stage ${at + 1} of ${stages.length}` : tightWords(tightening, next)}
        </Button>
        <Button isDisabled={ticked.length === 0} onPress={() => setTicked(ticked.slice(0, -1))}>
          One back
        </Button>
        {ticked.length > 0 && next !== undefined ? (
          <Button onPress={() => setRefusal(note(ticked))}>Note as far as bolt {ticked.at(-1)}</Button>
        ) : null}
        {ticked.length === 0 && left.length > 1 ? (
          <Button className="whole-stage" onPress={() => setRefusal(note(left))}>
            All {left.length} are, in this order
          </Button>
        ) : null}
      </div>
      <Refused refusal={refusal} />
      <PulledWithForm stage={stage} form={form} onChange={onForm} />
      <p className="faint">
        {orderWords(tightening)} {pullWords(tightening, standing)}
      </p>
      <OtherOrder left={left} note={({ bolts, overruled }) => note(bolts, overruled)} />
    </div>
  );
};
