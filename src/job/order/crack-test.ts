/** @module The crack test that a machined part comes back with: asked for, noted, and what it showed. */
import type { CrackTestBy } from '../../engine/engine-type.ts';
import type { OrderedLine } from '../event.ts';
import type { OpenJob, Order } from '../job.ts';

/** The test that was noted last; one before the part was sent back says nothing of what is here. */
const notedOf = ({ since }: Order, line: string) => {
  const gone = since.findLastIndex((one) => one.kind === 'line sent back' && one.line === line);
  const noted = since
    .slice(gone + 1)
    .findLast((one) => one.kind === 'certificate noted' && one.line === line && one.crackTest !== undefined);
  return noted?.kind === 'certificate noted' ? noted.crackTest : undefined;
};

/** Whether a test showed a crack in what is here. */
export const showedCrack = (order: Order, { line }: OrderedLine): boolean =>
  notedOf(order, line)?.showed === 'a crack';

/** The test that is asked for after machining, where none is noted; undefined where nothing is lacking. */
export const testsLacking = (
  { sheet }: Pick<OpenJob, 'sheet'>,
  order: Order,
  { line, component, does }: OrderedLine,
): CrackTestBy | undefined => {
  const machined = does === 'machine' || does === 'sleeve' || does === 'build up';
  const asked = sheet.engine.components.get(component ?? '')?.machining?.crackTest.after;
  return machined && notedOf(order, line) === undefined ? asked : undefined;
};
