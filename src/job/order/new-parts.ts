/** @module What a delivery does to the measuring sheet: the part is another now, of the size ordered, and not yet measured. */
import type { EngineType } from '../../engine/engine-type.ts';
import { withReceived } from '../../measure/fitted-size.ts';
import type { Cell } from '../../measure/reading.ts';
import type { Fact, OrderedLine } from '../event.ts';
import type { OpenJob, Order } from '../job.ts';
import { setAside } from '../set-aside.ts';
import { ownCells } from './arrival.ts';
import { hereOf } from './here.ts';

const cellsAt = (
  engine: EngineType,
  line: OrderedLine | undefined,
  places: readonly string[],
): readonly Cell[] => {
  const component = engine.components.get(line?.component ?? '');
  return component === undefined ? [] : ownCells(engine, component, places);
};

/**
 * The job with what a fact about an order does to its sheet. A line of which something is here already keeps its
 * readings: the rest of it has come.
 */
export const withNewParts = (job: OpenJob, order: Order, fact: Fact): OpenJob => {
  const { engine } = job.sheet;
  const lineOf = (name: string) => order.lines.find(({ line }) => line === name);
  if (fact.kind === 'line sent back') return setAside(job, cellsAt(engine, lineOf(fact.line), fact.places));
  if (fact.kind !== 'delivery received') return job;
  let now = job;
  for (const { line: name, count } of fact.lines) {
    const line = lineOf(name);
    if (line?.component === undefined || line.size === undefined || count < 1) continue;
    now = { ...now, sheet: withReceived(now.sheet, line.component, line.places, line.size) };
    if (hereOf(order, name) === 0) now = setAside(now, cellsAt(engine, line, line.places));
  }
  return now;
};
