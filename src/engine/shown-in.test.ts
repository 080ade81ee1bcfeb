/** @module Figures are shown in the unit of their limits, and never say more than is known. */
import { describe, expect, it } from 'vitest';
import { bareFigure, figureText, shownIn, spreadText } from './shown-in.ts';

const inMillimetres = shownIn(undefined);

const printedIn = (unit: string, quantity: 'length' | 'angle' | 'force') =>
  shownIn({ quantity, limits: { new: {}, goesBack: {}, printed: { 'new.least': { text: '1', unit } } } });

// Each expected text follows from the rule stated in its sentence; there is no outside source for a way of writing.
describe('a figure of a characteristic', () => {
  it('is shown to the micrometre where it is a length', () => {
    expect(figureText(54.9804, inMillimetres)).toBe('54.980 mm');
    expect(bareFigure(-0.0004, inMillimetres)).toBe('0.000');
  });

  it('is shown in the unit of its limits, no coarser than the micrometre', () => {
    // source: the inch is 25.4 mm by definition
    expect(figureText(25.4, printedIn('in', 'length'))).toBe('1.00000 in');
    expect(figureText(25.4, printedIn('thou', 'length'))).toBe('1000.00 thou');
    expect(figureText(0.0254, printedIn('µm', 'length'))).toBe('25 µm');
    expect(figureText(Math.PI / 360, printedIn('deg', 'angle'))).toBe('0.50 deg');
    expect(figureText(251.26, shownIn({ quantity: 'force' }))).toBe('251.3 N');
    // source: standard gravity, 9.80665 m/s²
    expect(figureText(9.80665, printedIn('kgf', 'force'))).toBe('1.00 kgf');
  });

  it('has its spread rounded up, so that no one is told that more is known than is', () => {
    expect(spreadText(0.0021, inMillimetres)).toBe('± 0.003 mm');
    expect(spreadText(0.003, inMillimetres)).toBe('± 0.003 mm');
    expect(spreadText(0.1 + 0.2 - 0.297, inMillimetres)).toBe('± 0.003 mm');
    expect(spreadText(0, inMillimetres)).toBe('± 0.000 mm');
    expect(spreadText(2.01, shownIn({ quantity: 'force' }))).toBe('± 2.1 N');
  });
});
