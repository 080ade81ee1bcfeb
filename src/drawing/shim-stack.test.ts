/** @module Checks of a shim pack drawn as a stack. */
import { describe, expect, it } from 'vitest';
import { degrees, radians } from '../quantity/brand.ts';
import { errorWords, shimStack } from './shim-stack.ts';
import { svgText } from './svg.ts';

describe('a shim stack', () => {
  it('letters every shim, their sum, the need and the error', () => {
    const text = svgText(
      shimStack({
        title: 'fuel pump 2',
        shims: [0.5, 0.3, 0.2],
        needed: 0.996,
        error: 0.004,
        timingError: degrees(-0.0104),
      }),
    );
    expect(text).toContain('0.500 + 0.300 + 0.200 = 1.000 mm; needed 0.996 mm; +0.004 mm, 0.01° late.');
    for (const shim of ['0.500', '0.300', '0.200']) expect(text).toContain(`>${shim}</text>`);
  });

  it('tells early from late, and neither when it is on time', () => {
    expect(errorWords({ error: -0.02, timingError: degrees(0.05) })).toBe('−0.020 mm, 0.05° early');
    expect(errorWords({ error: 0.02, timingError: degrees(-0.05) })).toBe('+0.020 mm, 0.05° late');
    expect(errorWords({ error: -1e-17, timingError: radians(0) })).toBe('±0.000 mm, 0.00° on time');
    expect(errorWords({ error: 0.01 })).toBe('+0.010 mm');
  });
});
