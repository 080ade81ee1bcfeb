/** @module Uncertainty carried through random expressions agrees with the Python library `uncertainties`. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  certain,
  covariance,
  plus,
  propagate,
  standardUncertainty,
  type Uncertain,
  uncertain,
} from '../../src/quantity/uncertain.ts';
import { ask, lacking } from './program.ts';

/** An expression in both languages; smooth everywhere, so that both sides have a slope. */
interface Expression {
  readonly python: string;
  readonly value: (x: readonly number[]) => number;
}

const inputCount = 4;
const leaf: fc.Arbitrary<Expression> = fc.oneof(
  fc.nat({ max: inputCount - 1 }).map((index) => ({
    python: `x[${index}]`,
    value: (x: readonly number[]) => x[index] ?? Number.NaN,
  })),
  between(-3, 3).map((value) => ({ python: `(${value})`, value: () => value })),
);
const unary = (inner: fc.Arbitrary<Expression>): fc.Arbitrary<Expression> =>
  fc
    .tuple(
      inner,
      fc.constantFrom<readonly [python: string, f: (a: number) => number]>(
        ['umath.sin(@)', Math.sin],
        ['umath.cos(@)', Math.cos],
        ['umath.atan(@)', Math.atan],
        ['umath.exp(umath.sin(@))', (a) => Math.exp(Math.sin(a))],
        ['umath.sqrt(1 + (@) ** 2)', (a) => Math.sqrt(1 + a * a)],
        ['umath.log(2 + (@) ** 2)', (a) => Math.log(2 + a * a)],
        ['(-(@))', (a) => -a],
      ),
    )
    .map(([{ python, value }, [pattern, f]]) => ({
      python: pattern.replace('@', python),
      value: (x) => f(value(x)),
    }));
const binary = (inner: fc.Arbitrary<Expression>): fc.Arbitrary<Expression> =>
  fc
    .tuple(
      inner,
      inner,
      fc.constantFrom<readonly [python: string, f: (a: number, b: number) => number]>(
        ['(@ + #)', (a, b) => a + b],
        ['(@ - #)', (a, b) => a - b],
        ['(@ * #)', (a, b) => a * b],
        ['(@ / (3 + umath.sin(#)))', (a, b) => a / (3 + Math.sin(b))],
      ),
    )
    .map(([a, b, [pattern, f]]) => ({
      python: pattern.replace('@', a.python).replace('#', b.python),
      value: (x) => f(a.value(x), b.value(x)),
    }));
const deeper = (inner: fc.Arbitrary<Expression>): fc.Arbitrary<Expression> =>
  fc.oneof(unary(inner), binary(inner), binary(inner));
const expressions = deeper(deeper(deeper(deeper(leaf))));

/** Inputs that share some of three influences. */
const influences = ['bench', 'calibration', 'repeat'];
const inputs = fc.array(
  fc.record({
    value: fc.oneof(fc.constant(0), between(-4, 4)),
    shares: fc.array(fc.oneof(fc.constant(0), between(-0.2, 0.2)), {
      minLength: influences.length,
      maxLength: influences.length,
    }),
  }),
  { minLength: inputCount, maxLength: inputCount },
);
const cases = fc.sample(fc.noBias(fc.record({ inputs, first: expressions, second: expressions })), {
  seed: 14_253,
  numRuns: 400,
});

const program = `
import json, sys
from uncertainties import ufloat, covariance_matrix, umath
told = []
for case in json.load(sys.stdin):
  influences = [ufloat(0, 1) for _ in range(3)]
  x = [each['value'] + sum(s * i for s, i in zip(each['shares'], influences)) for each in case['inputs']]
  first, second = [eval(text) + 0 * influences[0] for text in case['texts']]
  told.append([first.n, second.n, first.s, second.s, covariance_matrix([first, second])[0][1]])
print(json.dumps(told))
`;

import { between } from '../between.ts';

const built = (value: number, shares: readonly number[]): Uncertain =>
  shares.reduce<Uncertain>(
    (sum, share, index) => plus(sum, uncertain(0, influences[index] ?? '', share)),
    certain(value),
  );

const carried = (f: (x: readonly number[]) => number, x: readonly Uncertain[]): Uncertain => {
  const through = propagate(f, x);
  if (through.kind === 'refused') throw new Error(through.refusal.what);
  return through.value;
};

describe('uncertainty carried through 400 pairs of random expressions with shared inputs', () => {
  it('agrees with the library in value, uncertainty and covariance', (context) => {
    const lacks = lacking('uncertainties');
    context.skip(lacks !== undefined, `${lacks}`);
    const asked = cases.map(({ inputs: given, first, second }) => ({
      inputs: given,
      texts: [first.python, second.python],
    }));
    const told: readonly (readonly number[])[] = JSON.parse(
      ask('/usr/bin/python3', ['-W', 'ignore', '-c', program], JSON.stringify(asked)),
    );
    expect(told).toHaveLength(cases.length);
    const wrong = cases.flatMap(({ inputs: given, first, second }, index) => {
      const x = given.map(({ value, shares }) => built(value, shares));
      const a = carried(first.value, x);
      const b = carried(second.value, x);
      const got = [a.value, b.value, standardUncertainty(a), standardUncertainty(b), covariance(a, b)];
      const scale = 1e-9 * (1 + Math.abs(a.value) + Math.abs(b.value) + (got[2] ?? 0) + (got[3] ?? 0));
      return got.every((each, at) => Math.abs(each - (told[index]?.[at] ?? Number.NaN)) <= scale)
        ? []
        : [`${first.python} and ${second.python}: ${got.join(' ')}, not ${told[index]?.join(' ')}`];
    });
    expect(wrong).toEqual([]);
    // the cases are worth having: most are uncertain, and many pairs share what they do not know
    expect(told.filter((row) => (row[2] ?? 0) > 1e-3).length).toBeGreaterThan(200);
    expect(told.filter((row) => Math.abs(row[4] ?? 0) > 1e-5).length).toBeGreaterThan(150);
  });
});
