/** @module The band inside a limit in which a size is not proved, and what is left between the bands. */
import { conformanceProbability, guardBand } from '../measure/guard-band.ts';
import { coverageFactor } from '../quantity/coverage.ts';
import { tidy } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { limitInputs, limitsGiven, misasked } from './limits-given.ts';
import { quantityOf, type Reckoning } from './reckoning.ts';

interface Limited {
  readonly least?: number;
  readonly greatest?: number;
}

/** The last value from inside outwards that still conforms, by halving. */
const edge = (inside: number, outside: number, conforms: (value: number) => boolean): number => {
  let [yes, no] = [inside, outside];
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (yes + no) / 2;
    if (conforms(middle)) yes = middle;
    else no = middle;
  }
  return yes;
};

/**
 * Sizes that are proved to be within their limits.
 *
 * Both limits count: where they lie close against the uncertainty the zone is narrower than limits less two guard
 * bands, and below 3.92 standard uncertainties (at 95 %) there is none.
 *
 * @param u       standard uncertainty, mm, 0 and up
 * @param bounds  one limit or both, mm
 * @param asked   probability asked for, above 0.5 and below 1
 * @returns the zone's ends, mm, open where a limit is missing; undefined where no size at all is proved
 * @source  ISO 14253-1:2017; JCGM 106:2012, 8.3
 * @example acceptanceZone(0.002, { least: 54.98, greatest: 55 }, 0.95)?.least // 54.98329
 */
export const acceptanceZone = (u: number, bounds: Limited, asked: number): Limited | undefined => {
  const { least, greatest } = bounds;
  const conforms = (value: number) => conformanceProbability(value, u, Infinity, bounds) >= asked;
  if (least !== undefined && greatest !== undefined) {
    const middle = (least + greatest) / 2;
    if (!conforms(middle)) return undefined;
    return { least: edge(middle, least, conforms), greatest: edge(middle, greatest, conforms) };
  }
  const band = guardBand(u, asked);
  return {
    ...(least !== undefined && { least: least + band }),
    ...(greatest !== undefined && { greatest: greatest - band }),
  };
};

export const guardBandReckoning: Reckoning = {
  name: 'guard-band',
  title: 'How far inside its limits a size must be measured to be proved within them',
  inputs: [
    {
      kind: 'quantity',
      key: 'known-to',
      title: 'what a size is known to: half the width of its 95 % interval',
      dimension: 'length',
      range: '0 and up',
      example: '0.004mm',
    },
    ...limitInputs,
  ],
  formula:
    'guard band g = z(asked) u; with both limits the ends solve Φ((greatest − y) / u) − Φ((least − y) / u) = asked',
  source: 'ISO 14253-1:2017 (1.65 u at 95 %), JCGM 106:2012, 8.3',
  reckon: (values) => {
    const wrong = misasked(values);
    if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
    const bounds = limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const half = quantityOf(values, 'known-to').value;
    if (half < 0) return refuse('a half width less than 0 is out of range', 'known-to', 'leave out its sign');
    const asked = quantityOf(values, 'conformance').value;
    const u = half / coverageFactor(0.95, Infinity);
    const zone = acceptanceZone(u, bounds.value, asked);
    return answer({
      results: {
        'guard-band': { value: tidy(guardBand(u, asked)), unit: 'mm' },
        ...(zone?.least !== undefined && { 'least-accepted': { value: tidy(zone.least), unit: 'mm' } }),
        ...(zone?.greatest !== undefined && {
          'greatest-accepted': { value: tidy(zone.greatest), unit: 'mm' },
        }),
      },
      notes: zone
        ? []
        : ['The limits lie too close for this: no size can be proved within them. Measure better.'],
    });
  },
};
