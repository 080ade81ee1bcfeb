/** @module A gauge set in a ring or in a micrometer: the size is the master's and the difference, and so are the errors. */
import { describe, expect, it } from 'vitest';
import { micrometer, readAll, reading, sheetOf, typed } from '../../test/engines/small-engine.ts';
import { correlation, minus, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import type { Instrument } from './instrument.ts';
import { readInstrument } from './instrument-file.ts';
import { judge } from './judge.ts';
import { sizeOf } from './size.ts';

const gauge: Instrument = {
  name: 'bore-gauge',
  kind: 'bore gauge',
  range: micrometer.range,
  resolution: typed('0.001'),
  permissibleError: typed('0.002'),
  repeatability: typed('0.0015'),
};
const ring: Instrument = {
  ...gauge,
  name: 'ring-55',
  kind: 'setting ring',
  resolution: typed('0'),
  repeatability: typed('0'),
  permissibleError: typed('0.003'),
};
const inMicrometer: Instrument = {
  ...gauge,
  setTo: { master: micrometer.name, size: typed('55.000'), shown: typed('0.000') },
};
const inRing: Instrument = {
  ...gauge,
  setTo: { master: ring.name, size: typed('55'), shown: typed('0.000') },
};

const registerOf = (...each: readonly Instrument[]) => new Map(each.map((one) => [one.name, one]));

const sizeWith = (instrument: Instrument, figure: string, masters: readonly Instrument[]): Uncertain => {
  const read = sizeOf(
    reading('main.1 main-shell-bore front vertical', typed(figure), instrument.name),
    instrument,
    {
      register: registerOf(...masters),
    },
  );
  if (read.kind === 'refused') throw new Error(read.refusal.what);
  return read.value;
};
const names = (size: Uncertain) => size.terms.map(({ name }) => name.replace(/ (r:|main).*/, ''));

describe('a size by comparison', () => {
  it('is the master and the difference, and the same where the dial was not turned to zero', () => {
    expect(sizeWith(inMicrometer, '0.052', [micrometer]).value).toBeCloseTo(55.052, 12);
    const shown = {
      ...gauge,
      setTo: { master: micrometer.name, size: typed('55.000'), shown: typed('55.000') },
    };
    expect(sizeWith(shown, '55.052', [micrometer]).value).toBeCloseTo(55.052, 12);
  });

  it('follows its master: a micrometer that shows too little stood wider', () => {
    const off = { ...micrometer, zero: typed('-0.002') };
    expect(sizeWith(inMicrometer, '0.052', [off]).value).toBeCloseTo(55.054, 12);
  });

  it('inherits the influences of the master, once each and in order of name', () => {
    const size = sizeWith(inMicrometer, '0.052', [micrometer]);
    expect(names(size)).toEqual([
      'calibration of bore-gauge',
      'calibration of mic-50-75',
      'repeat',
      'resolution',
      'setting of bore-gauge',
      'temperature of',
      'zero of mic-50-75',
    ]);
    const inOrder = size.terms.map(({ name }) => name);
    expect(inOrder).toEqual([...inOrder].sort());
  });

  it('carries no zero of a ring, whose size is engraved', () => {
    expect(names(sizeWith(inRing, '0.052', [ring]))).toEqual([
      'calibration of bore-gauge',
      'calibration of ring-55',
      'repeat',
      'resolution',
      'setting of bore-gauge',
      'temperature of',
    ]);
  });

  it('takes the size of a ring from its certificate, and its uncertainty at k = 2', () => {
    const certified = { ...ring, correction: typed('0.0012'), correctionUncertainty: typed('0.0008') };
    const size = sizeWith(inRing, '0.052', [certified]);
    expect(size.value).toBeCloseTo(55.0532, 12);
    // source: JCGM 100:2008, 4.3.3: an expanded uncertainty from a certificate over its k
    expect(size.terms.find(({ name }) => name === 'calibration of ring-55')?.share).toBeCloseTo(0.0004, 12);
    expect(standardUncertainty(size)).toBeLessThan(standardUncertainty(sizeWith(inRing, '0.052', [ring])));
  });

  it('is refused where the master is not there, or in the end its own', () => {
    const asked = (instrument: Instrument, masters: readonly Instrument[]) => {
      const read = sizeOf(reading('main.1 main-shell-bore', typed('0.05')), instrument, {
        register: registerOf(...masters),
      });
      return read.kind === 'refused' ? read.refusal.what : '';
    };
    expect(asked(inMicrometer, [])).toContain('mic-50-75, which is not in the register');
    const self = { ...gauge, setTo: { master: 'bore-gauge', size: typed('55'), shown: typed('0') } };
    expect(asked(self, [self])).toContain('in the end in itself');
    expect(
      asked(
        { ...inRing, setTo: { ...inRing.setTo, master: 'ring-55', size: typed('x'), shown: typed('0') } },
        [ring],
      ),
    ).toContain('no length');
  });
});

describe('a clearance between a journal by micrometer and a bore by a gauge set in it', () => {
  const journals = readAll('main.1', 'main-journal-diameter', ['54.980', '54.950', '54.980', '54.980']);
  const shells = (differences: boolean) =>
    readAll(
      'main.1',
      'main-shell-bore',
      differences ? ['0.050', '0.090', '0.050', '0.050'] : ['55.050', '55.090', '55.050', '55.050'],
      'bore-gauge',
    );
  const clearance = (instrument: Instrument) => {
    const sheet = sheetOf([...journals, ...shells(instrument.setTo !== undefined)], {
      instruments: registerOf(micrometer, ring, instrument),
    });
    const { value } = judge(sheet, 'main-clearance', 'main.1');
    if (!value) throw new Error('no clearance');
    return value;
  };

  it('loses calibration and zero of the micrometer', () => {
    const value = clearance(inMicrometer);
    expect(value.value).toBeCloseTo(0.14, 12);
    expect(names(value)).not.toContain('calibration of mic-50-75');
    expect(names(value)).not.toContain('zero of mic-50-75');
  });

  it('is known better than with the same gauge set in a ring as good as the micrometer', () => {
    expect(standardUncertainty(clearance(inMicrometer))).toBeLessThan(standardUncertainty(clearance(inRing)));
  });

  it('is what the two sizes share', () => {
    const bore = sizeWith(inMicrometer, '0.052', [micrometer]);
    const shaft = sizeWith(micrometer, '54.980', []);
    expect(correlation(bore, shaft)).toBeGreaterThan(0.5);
    expect(standardUncertainty(minus(bore, shaft))).toBeLessThan(
      Math.hypot(standardUncertainty(bore), standardUncertainty(shaft)) / 1.4,
    );
  });
});

describe('an instrument from a file', () => {
  const file = {
    name: 'bore-35-160',
    kind: 'bore gauge',
    least: '35 mm',
    greatest: '160 mm',
    resolution: '0.001 mm',
    'permissible-error': '0.004 mm',
    repeatability: '0.0015 mm',
  };

  it('says what it was set in', () => {
    const read = readInstrument({
      ...file,
      'set-in': 'mic-75-100',
      'set-size': '85.000 mm',
      'set-shown': '0.000 mm',
      correction: '0.001 mm',
      'correction-uncertainty': '0.002 mm',
      material: 'steel',
    });
    expect(read.kind === 'answer' && read.value).toMatchObject({
      setTo: { master: 'mic-75-100', size: typed('85.000'), shown: typed('0.000') },
      correction: typed('0.001'),
      correctionUncertainty: typed('0.002'),
      material: 'steel',
    });
  });

  it('says all of it or none', () => {
    const read = readInstrument({ ...file, 'set-in': 'mic-75-100' });
    expect(read.kind === 'refused' && read.refusal.remedy).toContain(
      'set-in, set-size and set-shown together',
    );
  });
});
