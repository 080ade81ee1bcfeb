/** @module What the machine shop is told: from measured to finished, in both units, and how much comes off. */
import { describe, expect, it } from 'vitest';
import { groundBack, toOrder } from '../../../test/job/ordering.ts';
import { machineShopSheetsOf, machiningLimits } from './machine-shop.ts';

describe("the machine shop's instruction", () => {
  // source: by hand: 49.725 / 25.4 = 1.957677…, 49.740 / 25.4 = 1.958267…; of journals read 49.920 to 49.930 and ground
  // to 49.725 … 49.740 there come off 49.920 - 49.740 = 0.180 at least, 49.930 - 49.725 = 0.205 at most
  it('says of each place what it measured, what it must become and how much comes off', () => {
    const [sheet, ...others] = machineShopSheetsOf(toOrder().open);
    expect(others).toEqual([]);
    expect(sheet?.supplier).toBe('Ashlar Grinding');
    const [part] = sheet?.parts ?? [];
    expect(part?.finished).toEqual({
      mm: { least: '49.725', greatest: '49.740' },
      in: { least: '1.9577', greatest: '1.9582' },
    });
    const [first, second] = part?.places ?? [];
    expect(first?.title).toBe('main bearing 1');
    expect(first?.from?.least.value).toBeCloseTo(49.92, 9);
    expect(first?.from?.greatest.value).toBeCloseTo(49.93, 9);
    expect(first?.from?.least.expanded).toBeGreaterThan(0.001);
    expect(first?.comesOff?.least).toBeCloseTo(0.18, 9);
    expect(first?.comesOff?.greatest).toBeCloseTo(0.205, 9);
    expect(second?.comesOff?.least).toBeCloseTo(0.16, 9);
  });

  it('gives fillets in both units', () => {
    const [part] = machineShopSheetsOf(toOrder().open)[0]?.parts ?? [];
    if (part?.machining === undefined) throw new Error('no terms');
    // source: 2.0 / 25.4 = 0.078740…, 2.4 / 25.4 = 0.094488…
    expect(machiningLimits(part.machining, 'fillet')).toEqual({
      mm: { least: '2.0', greatest: '2.4' },
      in: { least: '0.0788', greatest: '0.0944' },
    });
  });

  it('still says what it was once the part is back', () => {
    const places = (bench: ReturnType<typeof toOrder>) =>
      machineShopSheetsOf(bench.open)[0]?.parts[0]?.places.map(({ from }) => from?.least.value);
    expect(places(groundBack())).toEqual(places(toOrder()));
  });

  it('is none where nothing is machined', () => {
    const { plan: _, ...open } = toOrder().open;
    expect(machineShopSheetsOf(open)).toEqual([]);
  });
});
