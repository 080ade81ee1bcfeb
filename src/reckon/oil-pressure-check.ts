/** @module Oil pressure at a speed against the manual's least, and against a rough floor. */
import { verdictOf } from '../measure/guard-band.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * A rough floor under the oil pressure of a hot engine: a reason to look, never a limit.
 *
 * floor = 0.7 bar × speed / 1000 rpm
 *
 * @param speed  rpm, 0 and up
 * @returns Pa
 * @source  common practice, no source
 * @example roughFloor(1500) // 105000 Pa
 */
export const roughFloor = (speed: number): number => 70 * speed;

export const oilPressureCheckReckoning: Reckoning = {
  name: 'oil-pressure-check',
  title: 'Oil pressure at a speed, engine hot, against the manual’s least and a rough floor',
  inputs: [
    quantityInput(
      'pressure',
      'pressure',
      'oil pressure by the gauge, engine hot',
      '0 to 20 bar',
      '2.4±0.1bar',
    ),
    quantityInput('speed', 'speed', 'speed at which it was read', 'above 0 to 6000 rpm', '1500rpm'),
    quantityInput(
      'least',
      'pressure',
      'least that the manual asks for at this speed, engine hot; without it there is no verdict',
      'above 0 to 20 bar',
      '2.0bar',
      { optional: true },
    ),
    quantityInput('oil', 'temperature', 'oil in the sump or gallery', '0 to 150 °C', '80°C'),
    quantityInput('hot', 'temperature', 'least at which the manual calls it hot', '0 to 150 °C', '75°C', {
      optional: true,
    }),
  ],
  formula: 'verdict: pressure against the least; rough floor = 0.7 bar × speed / 1000 rpm',
  source:
    'the engine’s manual for the least; ISO 14253-1 for the verdict; rough floor: common practice, no source',
  reckon: (values) => {
    const [pressure, speed] = [quantityOf(values, 'pressure'), quantityOf(values, 'speed').value];
    const { least, hot } = values.quantities;
    const oil = quantityOf(values, 'oil').value;
    if (!(pressure.value >= 0 && pressure.value <= 2e6))
      return refuse('no lubricating oil stands at that', 'pressure', 'give 0 to 20 bar, by the gauge');
    if (!(speed > 0 && speed <= 6000))
      return refuse('no such engine runs so', 'speed', 'give it above 0, up to 6000 rpm');
    if (least !== undefined && !(least.value > 0 && least.value <= 2e6))
      return refuse('no manual asks for that', 'least', 'give it above 0, up to 20 bar, or leave it out');
    for (const [key, value] of [
      ['oil', oil],
      ['hot', hot?.value ?? 0],
    ] as const)
      if (!(value >= 0 && value <= 150)) return refuse('it is out of range', key, 'give 0 to 150 °C');
    const verdict =
      least === undefined
        ? undefined
        : verdictOf(pressure.value, standardUncertainty(pressure), Infinity, { least: least.value }, 0.95);
    const floor = roughFloor(speed);
    const low = pressure.value < floor;
    const cold = hot !== undefined && oil < hot.value;
    return answer({
      results: {
        pressure: result(pressure, 'bar', 1e-5),
        ...(least !== undefined && { least: result(least, 'bar', 1e-5) }),
        ...(verdict !== undefined && { verdict: { value: cold ? 'too cold to tell' : verdict, unit: '' } }),
        'rough-floor': { value: Number((floor / 1e5).toPrecision(6)), unit: 'bar' },
        'against-floor': { value: low ? 'below' : 'above', unit: '' },
      },
      notes: [
        ...(verdict === undefined
          ? [
              'No least was given: look it up in the manual. The rough floor is a reason to look, never a limit.',
            ]
          : []),
        ...(cold
          ? ['The oil is colder than the manual calls hot: cold oil shows more pressure than hot oil will.']
          : []),
        ...(low || (verdict === 'outside' && !cold)
          ? [
              'Stop and look: oil level, gauge against a second one, relief valve stuck or its spring weak, strainer, pump clearances, bearing clearances, a gallery plug left out.',
            ]
          : []),
        'Above the speed at which the relief valve opens the pressure rises no more: read it at the speeds that the manual names.',
        'No pressure within 10 to 15 s of the first start: stop the engine.',
      ],
    });
  },
};
