/** @module Sums are found by name, read their inputs, and never answer with something that is no number. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reckonByName, reckonings } from './list.ts';
import { quantityOf } from './reckoning.ts';

const refusalOf = (name: string, texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName(name, texts);
  return asked.kind === 'refused' ? asked.refusal : undefined;
};

/** What the inputs' own examples come to. */
const examplesOf = (name: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    (reckonings.find((known) => known.name === name)?.inputs ?? []).map(({ key, example }) => [key, example]),
  );

describe('a sum asked for by name', () => {
  it.each(reckonings.map(({ name }) => name))('%s answers the examples of its own inputs', (name) => {
    const asked = reckonByName(name, examplesOf(name));
    expect(asked.kind).toBe('answer');
    if (asked.kind === 'refused') return;
    expect(asked.value.name).toBe(name);
    expect(asked.value.inputs).toMatchObject(examplesOf(name));
    expect(Object.keys(asked.value.results).length).toBeGreaterThan(0);
  });

  it('is one of a kind, with its papers', () => {
    expect(new Set(reckonings.map(({ name }) => name)).size).toBe(reckonings.length);
    for (const { title, formula, source, inputs } of reckonings) {
      expect([title, formula, source].every((text) => text.length > 5)).toBe(true);
      expect(inputs.every((input) => input.title !== '' && input.range !== '' && input.example !== '')).toBe(
        true,
      );
      expect(inputs.every((input) => /^[a-z][a-z-]*$/.test(input.key))).toBe(true);
    }
  });

  it('keeps what was typed, and what was taken where nothing was', () => {
    const asked = reckonByName('piston-travel', { stroke: '98mm', rod: '168 mm', angle: '20°' });
    expect(asked.kind === 'answer' && asked.value.inputs).toEqual({
      stroke: '98mm',
      rod: '168 mm',
      'pin-offset': '0 mm',
      angle: '20°',
    });
  });

  it('that does not exist is refused with those that do', () => {
    expect(refusalOf('piston', {})?.remedy).toContain('choose one of piston-travel, crank-angle');
    expect(refusalOf('constructor', {})?.what).toBe('there is no sum constructor');
  });

  it('that asks for an input which it does not name is a mistake in the program', () => {
    expect(() => quantityOf({ quantities: {}, texts: {} }, 'rod')).toThrow('rod');
  });

  it('names keys that it does not take, and those that it does', () => {
    expect(refusalOf('piston-travel', { stroke: '98mm', length: '168mm', angle: '20deg' })).toEqual({
      what: 'piston-travel does not take length',
      where: 'length',
      remedy: 'give it stroke, rod, pin-offset, angle, rim',
    });
    expect(refusalOf('convert', JSON.parse('{"__proto__":"1","value":"1in","to":"mm"}'))?.where).toBe(
      '__proto__',
    );
  });

  it('names what is missing, with an example of each', () => {
    expect(refusalOf('piston-travel', { rod: '168mm' })).toEqual({
      what: 'piston-travel needs stroke, angle too',
      where: 'stroke, angle',
      remedy: 'add it with its unit, for example stroke=98mm angle=20deg',
    });
  });

  it.each([
    ['98±0.05mm', 0.05],
    ['98mm±0.05mm', 0.05],
    ['98 mm ± 50 µm', 0.05],
    ['98 +/- 0.05 mm', 0.05],
    ['98+-0.05mm', 0.05],
    ['98mm ± 0.05', 0.05],
    ['98 ± 2e-2 mm', 0.02],
    ['98mm ± 0 mm', 0],
  ])('takes %s as half the width of a 95 %% interval', (bore, half) => {
    const asked = reckonByName('clearance', { bore, shaft: '97mm' });
    const u = asked.kind === 'answer' ? (asked.value.results.clearance?.u ?? 0) : undefined;
    expect(u).toBeCloseTo(half / 1.959964, 9);
  });

  it.each([
    ['98±-0.05mm', 'what stands after ± is less than 0'],
    ['98±mm', 'no figure stands after ±'],
    ['98±0.05', 'the unit is missing: a length is asked for'],
    ['±0.05mm', 'it cannot be read as a number'],
    ['98±0.05deg', 'deg is a unit of angle, not of length'],
    ['', 'nothing was typed'],
    ['98,000.5mm', 'it can be read in two ways'],
  ])('refuses %s', (bore, what) => {
    const refusal = refusalOf('clearance', { bore, shaft: '97mm' });
    expect(refusal?.what).toBe(what);
    expect(refusal?.where).toBe(`bore=${bore}`);
  });

  it('answers with numbers and nothing else, whatever is typed', () => {
    const number = fc.oneof(
      fc.double({ noNaN: true, min: -1e4, max: 1e4 }).map((value) => value.toFixed(4)),
      fc.constantFrom('0', '1e-30', '1e12', '-0', '0.0001', '49', '98', '168', '200'),
    );
    const unit = fc.constantFrom('mm', 'in', 'deg', 'rad', '%', '', 'µm', '°C');
    const text = fc
      .tuple(number, unit, fc.option(number))
      .map(
        ([value, symbol, half]) => `${value}${half === null ? '' : ` ± ${half.replace('-', '')}`} ${symbol}`,
      );
    for (const { name, inputs } of reckonings) {
      const texts = fc.record(
        Object.fromEntries(inputs.map(({ key, example }) => [key, fc.oneof(text, fc.constant(example))])),
      );
      fc.assert(
        fc.property(texts, (given) => {
          const asked = reckonByName(name, given as Readonly<Record<string, string>>);
          if (asked.kind === 'refused') {
            expect(asked.refusal.what).not.toBe('');
            expect(asked.refusal.remedy).not.toBe('');
            return;
          }
          for (const { value, u = 0 } of Object.values(asked.value.results)) {
            expect(typeof value === 'string' || Number.isFinite(value)).toBe(true);
            expect(Number.isFinite(u) && u >= 0).toBe(true);
          }
        }),
        { numRuns: 500 },
      );
    }
  });
});
