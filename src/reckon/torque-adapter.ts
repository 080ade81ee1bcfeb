/** @module What a torque wrench must be set to when an adapter makes it longer. */
import { radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { propagate, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * Setting of a wrench with an adapter on its square.
 *
 * setting = torque L / (L + A cos angle)
 *
 * @param torque   wanted at the bolt, N·m
 * @param wrench   from the middle of the square to the middle of the hand, mm, above 0
 * @param adapter  from the square to the bolt, mm, 0 and up
 * @param angle    of the adapter off the wrench's line, radians: 0 outward, π back along it
 * @returns N·m
 * @source  lever arms; the rule is printed with torque wrenches and in ISO 6789 practice
 * @example adapterSetting(30, 12, 6, 0) // 20 N·m
 */
export const adapterSetting = (torque: number, wrench: number, adapter: number, angle: number): number =>
  (torque * wrench) / (wrench + adapter * Math.cos(angle));

export const torqueAdapterReckoning: Reckoning = {
  name: 'torque-adapter',
  title: 'Setting of a torque wrench with an adapter on it',
  inputs: [
    quantityInput('torque', 'torque', 'torque wanted at the bolt', 'above 0', '100N·m'),
    quantityInput(
      'wrench',
      'length',
      'from the middle of the square to the middle of the hand',
      'above 0',
      '400±10mm',
    ),
    quantityInput('adapter', 'length', 'from the square to the middle of the bolt', '0 and up', '60mm'),
    quantityInput(
      'angle',
      'angle',
      'adapter off the line of the wrench: 0 outward, 90 square to it',
      '0 to 180 deg',
      '0deg',
      { unlessGiven: '0 deg' },
    ),
  ],
  formula: 'setting = torque L / (L + A cos angle)',
  source: 'lever arms; common practice with torque wrenches, ISO 6789 for their tolerance',
  reckon: (values) => {
    const inputs = ['torque', 'wrench', 'adapter', 'angle'].map((key) => quantityOf(values, key)) as [
      Uncertain,
      Uncertain,
      Uncertain,
      Uncertain,
    ];
    const [torque, wrench, adapter, angle] = inputs.map(({ value }) => value) as [
      number,
      number,
      number,
      number,
    ];
    if (!(torque > 0 && torque < 1e5))
      return refuse(`a torque of ${torque} N·m is out of range`, 'torque', 'give it above 0');
    if (!(wrench > 0 && adapter >= 0 && adapter < 0.9 * wrench))
      return refuse(
        'the adapter is as long as the wrench',
        'wrench, adapter',
        'give both lengths; no adapter is that long',
      );
    if (!(angle >= 0 && angle <= Math.PI + 1e-9))
      return refuse(
        `an angle of ${formatFigure(toDegrees(radians(angle)), 1)} deg is out of range`,
        'angle',
        'give 0 to 180 deg',
      );
    const setting = propagate(([t = 0, l = 0, a = 0, at = 0]) => adapterSetting(t, l, a, at), inputs);
    if (setting.kind === 'refused') return setting;
    return answer({
      results: {
        setting: result(setting.value, 'N·m'),
        'if-forgotten': {
          value: Number(((torque * (wrench + adapter * Math.cos(angle))) / wrench).toPrecision(6)),
          unit: 'N·m',
        },
      },
      notes: [
        'Pull at the middle of the grip: the length counts from there.',
        ...(Math.abs(angle - Math.PI / 2) < 1e-6
          ? ['Square to the wrench, the adapter changes nothing.']
          : []),
      ],
    });
  },
};
