/** @module May these bolts be pulled, as far as they stretch for good? */
import type { Fastener } from '../../engine/fastener.ts';
import { badFigure, type Trouble, trouble } from '../../journal/trouble.ts';
import { lengthOf, type Typed, typedText } from '../../quantity/typed.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { oneUseLineOf } from '../order/one-use.ts';
import { orderedLines } from '../order/standing.ts';
import type { Tightening } from '../tighten/tightening.ts';

type Asked = RequestOf<'tighten stage'>;

/** New ones that were ordered for it and have not come. */
const awaited = (job: OpenJob, { renewedBy }: Fastener, where: string): Trouble => {
  const part = job.sheet.engine.oneUse.get(renewedBy ?? '');
  const lines = part === undefined ? [] : orderedLines(job);
  const line = lines.find((one) => part !== undefined && one.line.line === oneUseLineOf(part));
  return line === undefined || line.here > 0
    ? undefined
    : trouble(
        `the new ones are still awaited: order ${line.order.order}`,
        where,
        'receive them first; then these can be new',
      );
};

const tooLong = (
  stretch: NonNullable<Fastener['stretch']>,
  longest: Typed | undefined,
  where: string,
): Trouble => {
  if (stretch.kind === 'once')
    return trouble(
      'they stretch for good when they are tightened, and these are used',
      where,
      'fit new ones, and say that they are new',
    );
  if (longest === undefined)
    return trouble(
      'used bolts that stretch are measured before they go in again',
      where,
      `measure all, and give the longest: it may be ${stretch.longest} mm at most`,
    );
  const bad = badFigure(longest, 'length', where, { above: 0 });
  if (bad !== undefined) return bad;
  const length = lengthOf(longest);
  return length.kind === 'answer' && length.value > stretch.longest
    ? trouble(
        `the longest, ${typedText(longest)}, has stretched beyond ${stretch.longest} mm`,
        where,
        'fit new ones, all of this joint',
      )
    : undefined;
};

/** Asked once, before the first stage is pulled; where tightened again, they were asked before. */
export const stretchTrouble = (
  job: OpenJob,
  { fastener, again, stages }: Tightening,
  { stage, boltsAre, longest }: Asked,
  where: string,
): Trouble => {
  const { stretch } = fastener;
  if (stretch === undefined || again !== undefined)
    return boltsAre === undefined && longest === undefined
      ? undefined
      : trouble('nobody asks whether these bolts are new', where, 'leave it out');
  const said = stages.some(({ noted }) => noted.some((one) => one.boltsAre !== undefined));
  if (boltsAre === undefined)
    return said || stage > 0
      ? undefined
      : trouble(
          `${fastener.title} stretch for good when they are tightened, and nobody says whether these are new`,
          where,
          stretch.kind === 'once'
            ? 'fit new ones, and say that they are new'
            : 'say that they are new, or measure them and give the longest',
        );
  return boltsAre === 'new' ? awaited(job, fastener, where) : tooLong(stretch, longest, where);
};
