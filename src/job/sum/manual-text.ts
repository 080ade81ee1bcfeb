/** @module Figures that the engine type says once, as a sum takes them: of the engine, of its valves, of its pumps' spill. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { GivenInput } from '../../engine/operation-sum.ts';
import type { ValveEvents } from '../../engine/valve-setting.ts';
import { radians, toDegrees } from '../../quantity/brand.ts';
import { eventsInCycle } from '../../reckon/valve-clearance-order.ts';

/** As few digits as say it: nothing was measured here. */
export const plainly = (value: number): string => String(Number(value.toPrecision(9)));

/** What the engine type says of the engine as a whole. */
export const engineText = (engine: EngineType, of: Extract<GivenInput, { kind: 'engine' }>['of']): string => {
  switch (of) {
    case 'stroke':
      return `${plainly(engine.stroke)} mm`;
    case 'rod':
      return `${plainly(engine.rod)} mm`;
    case 'pin-offset':
      return `${plainly(engine.pinOffset)} mm`;
    case 'cylinders':
      return String(engine.cylinders);
    case 'firing-order':
      return engine.firingOrder.join('-');
    default:
      return of satisfies never;
  }
};

const angleText = (angle: number): string => `${plainly(toDegrees(radians(angle)))} deg`;

const eventOf = {
  'inlet-opens': 'inletOpens',
  'inlet-closes': 'inletCloses',
  'exhaust-opens': 'exhaustOpens',
  'exhaust-closes': 'exhaustCloses',
} as const satisfies Readonly<Record<string, keyof ValveEvents>>;

/** When the valves lift; undefined where the engine type does not say it. */
export const valvesText = (
  { valveSetting: setting }: EngineType,
  of: Extract<GivenInput, { kind: 'valves' }>['of'],
): string | undefined => {
  if (setting === undefined) return undefined;
  const { events, rest } = setting;
  if (of === 'rest') return angleText(rest);
  if (of !== 'events') return angleText(events[eventOf[of]]);
  const angles = eventsInCycle({
    inletOpensBeforeTop: toDegrees(events.inletOpens),
    inletClosesAfterBottom: toDegrees(events.inletCloses),
    exhaustOpensBeforeBottom: toDegrees(events.exhaustOpens),
    exhaustClosesAfterTop: toDegrees(events.exhaustCloses),
  });
  return Object.entries(angles)
    .map(([name, at]) => `${name} ${plainly(at)}`)
    .join(', ');
};

/** Crank before the top at which a pump spills when it is right; undefined where the manual does not say it so. */
export const spillText = ({ pumpTiming }: EngineType): string | undefined => {
  const { check } = pumpTiming ?? {};
  return check?.largerIs === 'earlier' ? angleText(check.nominal / (check.rim ?? 1)) : undefined;
};
