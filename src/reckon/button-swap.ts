/** @module The new button when the dimension that it sets has been measured with the old one. */
import { answer, refuse } from '../quantity/refusal.ts';
import { combine, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { namedSizes } from './named-sizes.ts';
import { quantityOf, type Reckoning, type Result, result } from './reckoning.ts';

/**
 * Thickness of the button that brings a dimension to what it must be.
 *
 * new button = dimension measured + old button − dimension wanted
 *
 * @param measured  with the old button in place
 * @param old       the old button
 * @param wanted    the dimension wanted
 * @returns thickness, in the unit of all three
 * @source  TM 5-6115-584-34, p 144; TM 9-2330-356-14, p 7-65
 * @example newButton(certain(1.093), certain(0.119), certain(1.089)) // 0.123 in
 */
export const newButton = (measured: Uncertain, old: Uncertain, wanted: Uncertain): Uncertain =>
  combine([
    [1, measured],
    [1, old],
    [-1, wanted],
  ]);

export const buttonSwapReckoning: Reckoning = {
  name: 'button-swap',
  title: 'New tappet button, or any spacer, from the dimension that the old one gives',
  inputs: [
    quantityInput(
      'measured',
      'length',
      'dimension measured with the old button in place',
      'any',
      '1.093±0.0005in',
    ),
    quantityInput('old', 'length', 'thickness of the old button', 'above 0', '0.119in'),
    quantityInput('wanted', 'length', 'dimension that the manual wants', 'any', '1.089in'),
    textInput('buttons', 'buttons on offer, each with its thickness', 'L 0.119, M 0.122, N 0.125 in', {
      range: 'names with thicknesses, commas between',
      optional: true,
    }),
  ],
  formula: 'new = measured + old − wanted; the nearest on offer',
  source: 'TM 5-6115-584-34, p 144; TM 9-2330-356-14, p 7-65',
  reckon: (values) => {
    const [measured, old, wanted] = ['measured', 'old', 'wanted'].map((key) => quantityOf(values, key)) as [
      Uncertain,
      Uncertain,
      Uncertain,
    ];
    if (!(old.value > 0)) return refuse('a button has a thickness above 0', 'old', 'measure the old one');
    const needed = newButton(measured, old, wanted);
    if (!(needed.value > 0))
      return refuse(
        'the button would have no thickness',
        'measured, old, wanted',
        'check all three: a figure or a unit is wrong, or the wrong way round',
      );
    const results: Record<string, Result> = { needed: result(needed, 'mm') };
    if (values.texts.buttons === undefined) return answer({ results, notes: [] });
    const buttons = namedSizes('buttons', values.texts.buttons);
    if (buttons.kind === 'refused') return buttons;
    const nearest = buttons.value.toSorted(
      (a, b) => Math.abs(a.size.value - needed.value) - Math.abs(b.size.value - needed.value),
    )[0];
    if (nearest === undefined) return refuse('no button is on offer', 'buttons', 'name one at least');
    const steps = buttons.value.map(({ size }) => size.value).toSorted((a, b) => a - b);
    const beyond = needed.value < (steps[0] ?? 0) || needed.value > (steps.at(-1) ?? 0);
    return answer({
      results: {
        ...results,
        button: { value: nearest.name, unit: '' },
        thickness: result(nearest.size, 'mm'),
        'left-over': result(
          combine([
            [1, nearest.size],
            [-1, needed],
          ]),
          'mm',
        ),
      },
      notes: [
        ...(beyond
          ? [
              'What is needed lies beyond every button on offer: look for wear of cam or tappet, or a wrong part.',
            ]
          : []),
        'Do not lift the gear from its place while the button is changed, and measure again with the new one fitted.',
      ],
    });
  },
};
