/** @module Which valves can be set at which position of the crank, and the fewest positions for all of them. */

import { radians, toDegrees } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Result, type Values } from './reckoning.ts';

export interface ValveTiming {
  /** Each in degrees of crank from the dead centre that it is told by. */
  readonly inletOpensBeforeTop: number;
  readonly inletClosesAfterBottom: number;
  readonly exhaustOpensBeforeBottom: number;
  readonly exhaustClosesAfterTop: number;
}

export interface SettingPosition {
  /** Cylinder whose piston stands at the top before its working stroke. */
  readonly cylinder: number;
  /** `1 inlet`, `2 exhaust` … */
  readonly valves: readonly string[];
}

/**
 * The events of the valves in the cycle.
 *
 * @param timing  when the valves lift, each from its own dead centre
 * @returns degrees of crank from the top before the working stroke
 * @source  four-stroke cycle: the exhaust opens about the bottom at 180, the inlet closes about the bottom at 540
 * @example eventsInCycle({ inletOpensBeforeTop: 10, inletClosesAfterBottom: 45, exhaustOpensBeforeBottom: 45, exhaustClosesAfterTop: 10 })['inlet-opens'] // 350 deg
 */
export const eventsInCycle = (timing: ValveTiming) => ({
  'inlet-opens': 360 - timing.inletOpensBeforeTop,
  'inlet-closes': 540 + timing.inletClosesAfterBottom,
  'exhaust-opens': 180 - timing.exhaustOpensBeforeBottom,
  'exhaust-closes': 360 + timing.exhaustClosesAfterTop,
});

/** Whether a cam lifts at an angle of the cycle: from opening to closing, with a margin on either side, 720 degrees round. */
const lifts = (at: number, opens: number, closes: number, margin: number): boolean =>
  (at - opens + margin + 1440) % 720 <= closes - opens + 2 * margin;

/**
 * What can be set with each cylinder in turn at its firing top.
 *
 * @param order   firing order, each cylinder once, fired at even angles
 * @param timing  when the valves lift
 * @param margin  degrees of crank past closing, and before opening, over which a valve is not yet at rest
 * @returns positions in the order in which they are turned to, with the valves whose tappets lie on the base circle
 * @source  common practice, no source; four-stroke cycle
 * @example settingPositions([1, 3, 4, 2], { inletOpensBeforeTop: 10, inletClosesAfterBottom: 45, exhaustOpensBeforeBottom: 45, exhaustClosesAfterTop: 10 }, 10)[0]?.valves.join(', ') // '1 inlet, 1 exhaust, 2 inlet, 3 exhaust'
 */
export const settingPositions = (
  order: readonly number[],
  timing: ValveTiming,
  margin: number,
): readonly SettingPosition[] => {
  const interval = 720 / order.length;
  const events = eventsInCycle(timing);
  const inlet = [events['inlet-opens'], events['inlet-closes']] as const;
  const exhaust = [events['exhaust-opens'], events['exhaust-closes']] as const;
  return order.map((cylinder, turn) => ({
    cylinder,
    valves: order
      .toSorted((a, b) => a - b)
      .flatMap((other) => {
        const at = ((((turn - order.indexOf(other)) * interval) % 720) + 720) % 720;
        return [
          ...(lifts(at, inlet[0], inlet[1], margin) ? [] : [`${other} inlet`]),
          ...(lifts(at, exhaust[0], exhaust[1], margin) ? [] : [`${other} exhaust`]),
        ];
      }),
  }));
};

/**
 * The fewest positions at which every valve can be set, each valve named once.
 *
 * @param positions  as above, up to 20
 * @returns positions in turning order with the valves to set there; undefined where some valve is never at rest
 * @source  every choice of positions weighed, fewest first
 * @example fewestPositions([{ cylinder: 1, valves: ['1 inlet', '1 exhaust'] }])?.length // 1
 */
export const fewestPositions = (
  positions: readonly SettingPosition[],
): readonly SettingPosition[] | undefined => {
  const all = new Set(
    positions
      .map(({ cylinder }) => cylinder)
      .flatMap((cylinder) => [`${cylinder} inlet`, `${cylinder} exhaust`]),
  );
  const search = (from: number, left: ReadonlySet<string>, more: number): readonly number[] | undefined => {
    if (left.size === 0) return [];
    if (more === 0) return undefined;
    for (let at = from; at < positions.length; at += 1) {
      const rest = new Set([...left].filter((valve) => !positions[at]?.valves.includes(valve)));
      if (rest.size === left.size) continue;
      const found = search(at + 1, rest, more - 1);
      if (found) return [at, ...found];
    }
    return undefined;
  };
  for (let count = 1; count <= positions.length; count += 1) {
    const chosen = search(0, all, count);
    if (!chosen) continue;
    const set = new Set<string>();
    return chosen.map((at) => {
      const { cylinder = 0, valves = [] } = positions[at] ?? {};
      const here = valves.filter((valve) => !set.has(valve));
      for (const valve of here) set.add(valve);
      return { cylinder, valves: here };
    });
  }
  return undefined;
};

/**
 * The firing order as it is written.
 *
 * @param text  `1, 3, 4, 2` or `1-3-4-2`
 * @returns cylinders; refuses an order that leaves one out or names one twice
 * @source  none: it reads
 * @example readFiringOrder('1-3-3') // refused
 */
export const readFiringOrder = (text: string): Answer<readonly number[]> => {
  const order = text
    .split(/[\s,;-]+/)
    .filter(Boolean)
    .map(Number);
  const sound =
    order.length > 0 &&
    order.length <= 20 &&
    order.toSorted((a, b) => a - b).every((each, at) => each === at + 1);
  return sound
    ? answer(order)
    : refuse('the firing order does not name every cylinder once', 'firing-order', 'write it as 1-3-4-2');
};

const angleKeys = ['inlet-opens', 'inlet-closes', 'exhaust-opens', 'exhaust-closes', 'margin'] as const;

/**
 * The positions that were asked for.
 *
 * @param values  firing order, when the valves lift, margin
 * @returns fewest positions; refuses angles that no engine has, and valves that never rest
 * @source  common practice, no source
 * @example valvePositions({ quantities: {}, texts: { 'firing-order': '2' } }) // refused
 */
export const valvePositions = (values: Values): Answer<readonly SettingPosition[]> => {
  const order = readFiringOrder(values.texts['firing-order'] ?? '');
  if (order.kind === 'refused') return order;
  const [inletOpens, inletCloses, exhaustOpens, exhaustCloses, margin] = angleKeys.map((key) =>
    toDegrees(radians(quantityOf(values, key).value)),
  ) as [number, number, number, number, number];
  for (const [at, key] of angleKeys.entries()) {
    const angle = [inletOpens, inletCloses, exhaustOpens, exhaustCloses, margin][at] ?? 0;
    if (!(angle > -60 && angle < 100))
      return refuse(
        `${angle} deg is no angle of a valve's timing`,
        key,
        'give it from its dead centre, -60 to 100 deg',
      );
  }
  const timing = {
    inletOpensBeforeTop: inletOpens,
    inletClosesAfterBottom: inletCloses,
    exhaustOpensBeforeBottom: exhaustOpens,
    exhaustClosesAfterTop: exhaustCloses,
  };
  const positions = fewestPositions(settingPositions(order.value, timing, margin));
  return positions === undefined
    ? refuse('with such a margin no position leaves every valve at rest', 'margin', 'give a smaller one')
    : answer(positions);
};

export const valveClearanceReckoning: Reckoning = {
  name: 'valve-clearance-order',
  title: 'Which valves to set at which position of the crank, in the fewest turns',
  inputs: [
    textInput('firing-order', 'firing order', '1-3-4-2', {
      range: 'every cylinder once; four-stroke, fired at even angles',
    }),
    quantityInput('inlet-opens', 'angle', 'inlet opens before the top', '-60 deg to 100 deg', '10deg', {
      unlessGiven: '10 deg',
    }),
    quantityInput('inlet-closes', 'angle', 'inlet closes after the bottom', '-60 deg to 100 deg', '45deg', {
      unlessGiven: '45 deg',
    }),
    quantityInput(
      'exhaust-opens',
      'angle',
      'exhaust opens before the bottom',
      '-60 deg to 100 deg',
      '45deg',
      { unlessGiven: '45 deg' },
    ),
    quantityInput('exhaust-closes', 'angle', 'exhaust closes after the top', '-60 deg to 100 deg', '10deg', {
      unlessGiven: '10 deg',
    }),
    quantityInput(
      'margin',
      'angle',
      'past closing and before opening, until the tappet lies on the base circle',
      '0 deg to 60 deg',
      '20deg',
      { unlessGiven: '20 deg' },
    ),
  ],
  formula: 'each valve is set where its cam does not lift; the fewest positions by weighing every choice',
  source: 'common practice, no source; the four-stroke cycle. The maker’s own order goes before it',
  reckon: (values) => {
    const positions = valvePositions(values);
    if (positions.kind === 'refused') return positions;
    const results: Record<string, Result> = Object.fromEntries(
      positions.value.map(({ cylinder, valves }, at) => [
        `position.${at + 1}`,
        { value: `cylinder ${cylinder} at its firing top: ${valves.join(', ')}`, unit: '' },
      ]),
    );
    return answer({
      results: { positions: { value: positions.value.length, unit: '1' }, ...results },
      notes: [
        'The firing top is the one where the other valves of its twin rock. Cold or hot as the manual says, and once more after the first run.',
      ],
    });
  },
};
