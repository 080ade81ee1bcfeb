/** @module What opens an offer and what bars it beside the size: cracks, heat, fillets, walls, times, deposits, grades. */
import { describe, expect, it } from 'vitest';
import { wornAs, wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import type { Component, EngineType, Offer } from '../engine/engine-type.ts';
import { cellKey, type Reading } from '../measure/reading.ts';
import type { Sheet } from '../measure/sheet.ts';
import { hours, mm } from '../quantity/brand.ts';
import { optionsOf } from './options.ts';
import type { PlanQuestion } from './question.ts';

const { engine } = wornQuillfeather;

const asked = (sheet: Sheet, more: Partial<PlanQuestion> = {}): PlanQuestion => ({
  sheet,
  findings: [],
  hoursRun: hours(6000),
  demands: {},
  ...more,
});

const barredAt = (question: PlanQuestion, slot: string): readonly string[] =>
  optionsOf(question)
    .barred.filter((barred) => barred.slot === slot)
    .map(({ says }) => says);

const optionAt = (question: PlanQuestion, slot: string, does: string, size: string) =>
  optionsOf(question).options.find(
    (option) => option.slot === slot && option.does === does && option.size === size,
  );

const withComponent = (name: string, change: Partial<Component>): EngineType['components'] => {
  const component = engine.components.get(name);
  if (!component) throw new Error(`the engine has no ${name}`);
  return new Map(engine.components).set(name, { ...component, ...change });
};

const sizesOf = (name: string): NonNullable<Component['sizes']> => {
  const sizes = engine.components.get(name)?.sizes;
  if (!sizes) throw new Error(`${name} have no sizes`);
  return sizes;
};

const found = (more: Partial<PlanQuestion['findings'][number]>): PlanQuestion['findings'][number] => ({
  place: 'main.2',
  component: 'mains',
  mayGoBack: false,
  cracked: false,
  says: 'blued',
  ...more,
});

/** One more characteristic at the mains, read as given; none is read where nothing is given. */
const withMeasured = (
  sizes: Partial<NonNullable<Component['sizes']>>,
  texts: readonly string[],
  component = 'mains',
  at = 'main',
): Sheet => {
  const sheet = wornAs({
    components: withComponent(component, { sizes: { ...sizesOf(component), ...sizes } }),
    characteristics: new Map(engine.characteristics).set('further', {
      name: 'further',
      title: 'further size',
      at,
      planes: [''],
      axes: [''],
      wears: 'smaller',
      limits: { new: { least: 3, greatest: 3.4 }, goesBack: { least: 3, greatest: 3.4 }, printed: {} },
    }),
  });
  const gauge = { text: '0.001', unit: 'mm' };
  const readings = texts.map((text, index): Reading => {
    const cell = { place: `${at}.${index + 1}`, characteristic: 'further', plane: '', axis: '' };
    return { id: `further ${index}`, cell, typed: { text, unit: 'mm' }, instrument: 'cal-0-100' };
  });
  return {
    ...sheet,
    instruments: new Map(sheet.instruments).set('cal-0-100', {
      name: 'cal-0-100',
      kind: 'caliper',
      range: { least: { text: '0', unit: 'mm' }, greatest: { text: '100', unit: 'mm' } },
      resolution: gauge,
      permissibleError: gauge,
      repeatability: gauge,
      zero: { text: '0', unit: 'mm' },
    }),
    readings: new Map([...sheet.readings, ...readings.map((each) => [cellKey(each.cell), [each]] as const)]),
  };
};

describe('a journal that was overheated', () => {
  const barred = (findings: PlanQuestion['findings']) =>
    barredAt(asked(wornQuillfeather, { findings }), 'mains').filter((says) => says.startsWith('machine'));

  it('is not ground before its hardness is known, and it says so', () => {
    expect(barred([found({ overheated: true })])).toEqual([
      'machine to 0.25: overheated at main.2: its hardness must be known before it is ground',
      'machine to 0.50: overheated at main.2: its hardness must be known before it is ground',
    ]);
  });

  it('is ground where the hardness lies within what is asked for', () => {
    expect(barred([found({ overheated: true, hardness: '54 HRC' })])).toEqual([]);
    expect(barred([found({ overheated: true, hardness: '48 hrc' })])).toEqual([]);
  });

  it('is not ground where it is too hard or too soft, with both figures', () => {
    expect(barred([found({ overheated: true, hardness: '62 HRC' })])[0]).toBe(
      'machine to 0.25: overheated at main.2: hardness 62 HRC, and 48 to 58 HRC is asked for',
    );
    expect(barred([found({ overheated: true, hardness: '41,5 HRC' })])[0]).toContain('hardness 41,5 HRC');
  });

  it('is not judged by a hardness on another scale or in words', () => {
    expect(barred([found({ overheated: true, hardness: '520 HV' })])[0]).toContain('note it in HRC');
    expect(barred([found({ overheated: true, hardness: 'file bites' })])[0]).toContain('note it in HRC');
  });

  it('may take its hardness from a later finding at the same place, and from no other place', () => {
    const later = found({ hardness: '52 HRC', says: 'tested' });
    expect(barred([found({ overheated: true }), later])).toEqual([]);
    expect(barred([found({ overheated: true }), { ...later, place: 'main.3' }])).toHaveLength(2);
  });
});

describe('a fillet', () => {
  it('bars grinding where it is not measured, or not within its limits', () => {
    const sizes = { fillet: 'further' };
    const bars = (texts: readonly string[]) =>
      barredAt(asked(withMeasured(sizes, texts)), 'mains').filter((says) => says.startsWith('machine'));
    expect(bars([])[0]).toBe(
      'machine to 0.25: further size at main.1 is not measured, and it must be known first',
    );
    expect(bars(['3.2', '3.2', '2.6', '3.2'])[0]).toBe('machine to 0.25: further size at main.3 is outside');
    expect(bars(['3.2', '3.2', '3.2', '3.2'])).toEqual([]);
  });
});

describe('a wall and a hardened depth', () => {
  const withSizes = (name: string, change: Partial<NonNullable<Component['sizes']>>): PlanQuestion =>
    asked(wornAs({ components: withComponent(name, { sizes: { ...sizesOf(name), ...change } }) }));

  it('bar a step that would leave less than the least, as made', () => {
    // source: by hand, 5.0 mm less (86.022 mm - 85.000 mm) / 2
    const question = withSizes('bores', { wall: { asMade: mm(5), least: mm(4.5) } });
    expect(barredAt(question, 'bores')).toContain(
      'machine to 1.00: 4.489 mm of wall would be left, and 4.500 mm is the least',
    );
    expect(optionAt(question, 'bores', 'machine', '0.50')).toBeDefined();
  });

  it('count both ends of a shaft: from the greatest as made to the least finished', () => {
    // source: by hand, 0.50 mm less (54.990 mm - 54.470 mm) / 2 is 0.240 mm, less (54.990 mm - 54.720 mm) / 2 is 0.365 mm
    const question = withSizes('mains', { case: { asMade: mm(0.5), least: mm(0.25) } });
    expect(barredAt(question, 'mains')).toContain(
      'machine to 0.50: 0.240 mm of hardened depth would be left, and 0.250 mm is the least',
    );
    expect(optionAt(question, 'mains', 'machine', '0.25')).toBeDefined();
  });

  it('go by what is measured where it is: the thinnest place decides', () => {
    const wall = { wall: { of: 'further', least: mm(2.9) } };
    const bars = (texts: readonly string[]) =>
      barredAt(asked(withMeasured(wall, texts, 'bores', 'bore')), 'bores').filter((says) =>
        /wall|size/.test(says),
      );
    // Only the deepest size and the sleeve, whose bore is larger still.
    expect(bars(['3.3', '3.3', '3.3'])).toHaveLength(2);
    expect(bars(['3.3', '3.0', '3.3'])).toHaveLength(4);
    expect(bars(['3.3', '3.0', '3.3'])[0]).toMatch(
      /^machine to 0.25: 2\.\d+ mm of wall would be left at bore.2,/,
    );
    expect(bars(['3.3', '3.3'])[0]).toContain('further size at bore.3 is not measured');
  });

  it('bar a sleeve whose bore leaves too thin a wall', () => {
    // source: by hand, 5.9 mm less (88.000 mm - 85.000 mm) / 2
    const question = withSizes('bores', { wall: { asMade: mm(5.9), least: mm(4.5) } });
    expect(barredAt(question, 'bores')).toContain(
      'sleeve to standard: 4.400 mm of wall would be left, and 4.500 mm is the least',
    );
  });
});

describe('grindings over the life of a crankshaft', () => {
  it('are counted with those that the size as found tells of', () => {
    const withMost = (mostTimes: number): Sheet => ({
      ...wornAs({ components: withComponent('mains', { sizes: { ...sizesOf('mains'), mostTimes } }) }),
      sizesFound: new Map([['mains', '0.25']]),
    });
    expect(barredAt(asked(withMost(1)), 'mains')).toContain(
      'machine to 0.50: machined 1 times already, as its size 0.25 tells, and 1 times is the most',
    );
    expect(barredAt(asked(withMost(2)), 'mains').some((says) => says.includes('times'))).toBe(false);
  });
});

describe('an exchange', () => {
  it('lasts as long as it is said to, at its price, and its deposit comes back', () => {
    const option = optionAt(asked(wornQuillfeather), 'pumps@pump.2', 'exchange', 'standard');
    expect(option).toMatchObject({ cents: 11_800, hours: 5000, newParts: 1, days: 3 });
    expect(option?.reason).toBe('reconditioned; a deposit of 60.00 comes back with the old one');
  });

  it('is barred where the old part is cracked and a deposit is paid on it', () => {
    const findings = [found({ cracked: true, says: 'cracked' })];
    expect(barredAt(asked(wornQuillfeather, { findings }), 'mains')).toContain(
      'exchange, 0.25: cracked at main.2, and the old one is not taken for the deposit',
    );
    const offers = engine.offers.map(({ deposit: _, ...offer }): Offer => offer);
    const without = asked(wornAs({ offers }), { findings });
    expect(optionAt(without, 'mains', 'exchange', '0.25')).toBeDefined();
  });

  it('is barred where each part stays in its own place', () => {
    const sheet = wornAs({ components: withComponent('pumps', { stays: true }) });
    expect(barredAt(asked(sheet), 'pumps@pump.1')).toContain(
      'exchange, standard: each stays in its own place, and one from another engine does not do',
    );
  });
});

describe('a crack', () => {
  it('bars machining, building up and sleeving alike', () => {
    const offers = engine.offers.map(
      (offer): Offer =>
        offer.component === 'mains' && offer.size === '0.50' ? { ...offer, does: 'build up' } : offer,
    );
    const findings = [
      found({ cracked: true, says: 'cracked' }),
      found({ cracked: true, says: 'cracked', component: 'bores', place: 'bore.1' }),
    ];
    const question = asked(wornAs({ offers }), { findings });
    expect(barredAt(question, 'mains')).toContain('build up to 0.50: cracked at main.2');
    expect(barredAt(question, 'bores')).toContain('sleeve to standard: cracked at bore.1');
  });
});

describe('what an operation disturbs', () => {
  it('is not put back once the operation is done', () => {
    const sheet = wornAs({
      couplings: [{ kind: 'disturbed', by: 'lift-pumps', renew: 'pumps' }],
    });
    expect(barredAt(asked(sheet), 'pumps@pump.1')).toEqual([]);
    expect(barredAt(asked(sheet, { done: ['lift-pumps'] }), 'pumps@pump.1')).toEqual([
      'put back: it is renewed once this is done: Lift the fuel pumps and tie each shim pack to its pump',
    ]);
  });
});

describe('a part that is made in grades', () => {
  const graded = (texts: readonly string[]): PlanQuestion => {
    const steps = [
      { name: 'thin', when: { greatest: 3.1 } },
      { name: 'thick', when: { least: 3.1, greatest: 3.4 } },
    ];
    const sheet = withMeasured({}, texts);
    const gasket = engine.components.get('head-gasket');
    if (!gasket) throw new Error('the engine has no gasket');
    const offers = engine.offers.flatMap((offer): readonly Offer[] =>
      offer.component === 'head-gasket' ? steps.map(({ name }) => ({ ...offer, size: name })) : [offer],
    );
    const components = new Map(sheet.engine.components).set('head-gasket', {
      ...gasket,
      grades: { of: 'further', takes: 'greatest', steps },
    });
    return asked({ ...sheet, engine: { ...sheet.engine, offers, components } });
  };

  it('is taken in the grade that the greatest value asks for, and no other', () => {
    const question = graded(['3.00', '3.02', '3.21', '3.05']);
    expect(optionAt(question, 'head-gasket', 'replace', 'thick')?.reason).toBe(
      'new; further size at main.3 is 3.210 mm, which asks for grade thick',
    );
    expect(barredAt(question, 'head-gasket')).toContain(
      'replace, thin: further size at main.3 is 3.210 mm, which asks for grade thick',
    );
  });

  it('stays open in every grade until the value is measured, and says so', () => {
    const question = graded(['3.00', '3.02']);
    for (const grade of ['thin', 'thick'])
      expect(optionAt(question, 'head-gasket', 'replace', grade)?.reason).toBe(
        'new; which grade is settled once further size at main.3 is measured',
      );
  });

  it('is barred in every grade where no grade is made for the value', () => {
    const question = graded(['3.00', '3.02', '3.60', '3.05']);
    expect(optionAt(question, 'head-gasket', 'replace', 'thick')).toBeUndefined();
    expect(barredAt(question, 'head-gasket')).toContain(
      'replace, thick: further size at main.3 is 3.600 mm, for which there is no grade',
    );
  });
});
