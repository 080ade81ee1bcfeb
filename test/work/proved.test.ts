/** @module What the linter proves of an order of work, walked through: the demonstration engines in orders drawn at random. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EngineType, Operation } from '../../src/engine/engine-type.ts';
import { workProved } from '../../src/engine/lint/work-proved.ts';
import { brambleholt, mudlark, quillfeather } from '../engines/demo-engines.ts';

const engines = [quillfeather(), brambleholt(), mudlark()] as const;

/** An order that precedence allows, taken by chance at every step. */
const anyOrder = (operations: readonly Operation[], chances: readonly number[]): readonly Operation[] => {
  const order: Operation[] = [];
  const done = new Set<string>();
  for (const chance of chances) {
    const free = operations.filter(
      ({ name, after }) => !done.has(name) && after.every((one) => done.has(one)),
    );
    const next = free[Math.floor(chance * free.length)];
    if (next === undefined) break;
    done.add(next.name);
    order.push(next);
  }
  return order;
};

/** Works an order as a bystander would write it down. */
const walk = (engine: EngineType, order: readonly Operation[]) => {
  const off = new Set<string>();
  const spoilt = new Set<string>();
  const proved = new Set<string>();
  const unproved: string[] = [];
  for (const { name, removes, fits, needs, covers, renews } of order) {
    for (const need of needs) proved.add(need);
    for (const part of fits) expect(off.delete(part), `${part} fitted by ${name} was off`).toBe(true);
    for (const part of removes) off.add(part);
    for (const item of engine.oneUse.values()) if (item.disturbedBy.includes(name)) spoilt.add(item.name);
    for (const item of renews) spoilt.delete(item);
    for (const one of engine.characteristics.values())
      if ((covers.includes(one.name) || covers.includes(one.at)) && one.limits && !proved.has(one.name))
        unproved.push(`${one.name} by ${name}`);
  }
  return { off: [...off], spoilt: [...spoilt], unproved };
};

describe('the order of work of a demonstration engine', () => {
  it.each(engines.map((engine) => [engine.title, engine] as const))(
    'of the %s leaves nothing off, spoilt or covered unproved, in whatever order it is worked',
    (_, engine) => {
      expect(workProved(engine).map(({ proved }) => proved)).toEqual([true, true, true, true]);
      const operations = [...engine.operations.values()];
      fc.assert(
        fc.property(
          fc.array(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), {
            minLength: operations.length,
            maxLength: operations.length,
          }),
          (chances) => {
            const order = anyOrder(operations, chances);
            expect(order).toHaveLength(operations.length);
            expect(walk(engine, order)).toEqual({ off: [], spoilt: [], unproved: [] });
          },
        ),
        { numRuns: 60 },
      );
    },
  );
});
