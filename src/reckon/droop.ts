/** @module How far a governed engine's speed falls from no load to full load. */
import { answer, refuse } from '../quantity/refusal.ts';
import { combine, propagate } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * Droop: the fall of speed from no load to full load, in parts of a reference speed.
 *
 * droop = (no load - full load) / reference
 *
 * @param noLoad     steady speed without load, rpm, hot
 * @param fullLoad   steady speed at full load, same setting, rpm, above 0
 * @param reference  the speed of which it is a part, rpm, above 0: that at full load, or the rated one
 * @returns 0 where the speed does not fall; minus where it rises
 * @source  ISO 8528-5 (frequency droop, of the rated frequency)
 * @example speedDroop(1575, 1500) // 0.05
 */
export const speedDroop = (noLoad: number, fullLoad: number, reference = fullLoad): number =>
  (noLoad - fullLoad) / reference;

export const droopReckoning: Reckoning = {
  name: 'droop',
  title: 'Droop of a governor: how far the speed falls from no load to full load',
  inputs: [
    quantityInput(
      'no-load',
      'speed',
      'steady speed without load, engine hot',
      'full-load speed up to half as much again',
      '1575±2rpm',
    ),
    quantityInput(
      'full-load',
      'speed',
      'steady speed at full load, nothing touched between',
      'above 0',
      '1500±2rpm',
    ),
    quantityInput('wanted', 'ratio', 'droop wanted, as the manual has it', '0 to 25 %', '4%', {
      optional: true,
    }),
  ],
  formula: 'droop = (no load − full load) / full load; no load for the droop wanted = full load (1 + wanted)',
  source: 'ISO 8528-5 (frequency droop)',
  reckon: (values) => {
    const [noLoad, fullLoad] = [quantityOf(values, 'no-load'), quantityOf(values, 'full-load')];
    const wanted = values.quantities.wanted;
    if (!(fullLoad.value > 0 && fullLoad.value < 1e5))
      return refuse(`${fullLoad.value} rpm at full load is out of range`, 'full-load', 'give it above 0');
    if (noLoad.value < fullLoad.value)
      return refuse(
        'the speed without load is below that at full load: a governor lets it rise',
        'no-load, full-load',
        'check that the two are not swapped, and take both again on a steady engine',
      );
    if (noLoad.value > 1.5 * fullLoad.value)
      return refuse(
        'the speed without load is more than half as much again as at full load: nothing governs that engine',
        'no-load, full-load',
        'check both speeds; if they are so, stop the engine by its air before anything else',
      );
    if (wanted !== undefined && !(wanted.value >= 0 && wanted.value <= 0.25))
      return refuse('the droop wanted is out of range', 'wanted', 'give 0 to 25 %, as the manual has it');
    const found = propagate(([n = 0, f = 1]) => speedDroop(n, f), [noLoad, fullLoad]);
    if (found.kind === 'refused') return found;
    return answer({
      results: {
        droop: result(found.value, '%', 100),
        fall: result(
          combine([
            [1, noLoad],
            [-1, fullLoad],
          ]),
          'rpm',
        ),
        ...(wanted !== undefined && {
          'no-load-for-wanted': result(combine([[1 + wanted.value, fullLoad]]), 'rpm'),
        }),
      },
      notes: [
        'Set the speed without load first, engine hot; then load it fully, work out the droop, and seal both settings.',
        'Have the means at hand to shut off its air, and nobody in line with the flywheel.',
      ],
    });
  },
};
