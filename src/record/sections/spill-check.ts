/** @module The record's second check of the pumps: how early or late each delivers, what was read with packs tried before. */
import { figureText, shownIn } from '../../engine/shown-in.ts';
import type { OpenJob } from '../../job/job.ts';
import { type PumpPacks, pumpPacksOf } from '../../job/pumps.ts';
import type { PumpCheck } from '../../job/spill-check.ts';
import { toDegrees } from '../../quantity/brand.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { typedText } from '../../quantity/typed.ts';
import { timingText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle } from './named.ts';

/** `0.40° early ± 0.12°, mean of 2`. */
export const checkText = ({ error, expanded, repeats }: PumpCheck): string =>
  `${timingText(error)} ± ${formatFigure(toDegrees(expanded), 2)}°${repeats > 1 ? `, mean of ${repeats}` : ''}`;

const triedText = (job: OpenJob, place: string): string =>
  (job.packsTried.get(place) ?? [])
    .map(
      ({ shims, checks }) =>
        `${shims.map(typedText).join(' + ')}: read ${checks.map(({ typed }) => typedText(typed)).join(', ')}`,
    )
    .join('; ');

const rowOf = (job: OpenJob, { place, title, check }: PumpPacks['pumps'][number]): RecordRow => ({
  of: place,
  cells: [
    title,
    check === undefined ? 'not read since its pack was fitted' : checkText(check),
    check?.verdict ?? '',
    triedText(job, place),
    check?.moved?.says ?? '',
  ],
  ...(check?.verdict === 'within' ? {} : { marked: true as const }),
});

/** None where the engine type asks for no second check. */
export const spillCheckSection = (job: OpenJob): readonly RecordSection[] => {
  const { pumps, checked, timing } = pumpPacksOf(job);
  const check = timing?.check;
  if (check === undefined || checked === undefined) return [];
  const { engine } = job.sheet;
  const nominal = figureText(check.nominal, shownIn(engine.characteristics.get(check.of)));
  return [
    {
      name: 'pump timing',
      title: 'Timing of the pumps, checked again',
      says: [
        `Read: ${characteristicTitle(engine, check.of)}; ${nominal} where the pump is right. A larger reading is ${check.largerIs}. The crank is turned to it in running direction only.`,
        checked.spread === undefined
          ? `${checked.read} of ${checked.of} pumps read.`
          : `${checked.read} of ${checked.of} pumps read; cylinder to cylinder ${formatFigure(toDegrees(checked.spread), 2)}°${check.spread === undefined ? '' : `, at most ${formatFigure(toDegrees(check.spread), 2)}°`}.`,
        ...checked.notes.map((note) => `${note}.`),
      ],
      table: {
        heads: ['Pump', 'Timing', 'Verdict', 'Packs tried before', 'What the last change did'],
        rows: pumps.map((pump) => rowOf(job, pump)),
      },
      derived: true,
    },
  ];
};
