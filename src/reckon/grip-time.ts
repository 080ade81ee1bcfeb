/** @module Seconds in hand before a warm hub grips its shaft: while it is carried, and once it is on. */
import { expansionOf } from '../measure/expansion.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { type Cooling, coolingCurve, heatLoss, type WarmRing } from './cooling.ts';
import { quantityInput, textInput } from './inputs.ts';
import { metal, metalNamed, metals } from './metal.ts';
import { quantityOf, type Reckoning, type Values } from './reckoning.ts';

interface Gripping {
  readonly gripsAt: number;
  readonly carried: readonly Cooling[];
  readonly on: readonly Cooling[];
  readonly biot: number;
}

const seconds = (curve: readonly Cooling[]): number => curve.at(-1)?.seconds ?? 0;

/**
 * How a hub cools until its bore has come down to the shaft.
 *
 * @param values  bore, shaft, outside, width, mm; heated-to and room, °C; clearance that must be left, mm; what it is made
 *   of; emissivity
 * @returns temperature at which it grips, the two ways of cooling, Biot number; refuses sizes that do not fit and a hub that
 *   is not warm enough
 * @source  lumped heat with convection (Churchill and Chu 1975), radiation, and conduction through the air of the gap
 * @example gripping({ quantities: { bore: certain(50), shaft: certain(50.03), outside: certain(84), width: certain(40), 'heated-to': certain(40), room: certain(20), clearance: certain(0), emissivity: certain(0.8) }, texts: { hub: 'steel' } }) // refused
 */
export const gripping = (values: Values): Answer<Gripping> => {
  const [bore, shaft, outside, width, heatedTo, room, clearance, emissivity] = [
    'bore',
    'shaft',
    'outside',
    'width',
    'heated-to',
    'room',
    'clearance',
    'emissivity',
  ].map((key) => quantityOf(values, key).value) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  if (!(bore > 0 && outside > bore * 1.02 && width > 0 && width < 1e4))
    return refuse(
      'these are no sizes of a hub',
      'bore, outside, width',
      'give the bore, a larger outside, and the width',
    );
  if (Math.abs(shaft / bore - 1) > 0.02)
    return refuse('shaft and bore are not of one joint', 'bore, shaft', 'give both diameters at 20 °C');
  if (!(emissivity >= 0 && emissivity <= 1))
    return refuse(
      `an emissivity of ${emissivity} is out of range`,
      'emissivity',
      'give 0 to 1; oxidised steel is near 0.8',
    );
  if (!(room > -30 && room < 60 && heatedTo < 700))
    return refuse(
      'no hub is fitted at these temperatures',
      'heated-to, room',
      'give a room of -30 to 60 °C, a hub below 700 °C',
    );
  const name = metalNamed(values.texts.hub);
  const { perDegree } = expansionOf(name);
  const gripsAt = 20 + (shaft + clearance - bore) / (perDegree * bore);
  if (gripsAt >= heatedTo)
    return refuse(
      `the hub does not slip on at ${formatFigure(heatedTo, 0)} °C`,
      'heated-to',
      `it needs ${formatFigure(gripsAt, 0)} °C: see shrink-fit`,
    );
  if (gripsAt <= room + 1)
    return refuse(
      'the hub never grips: it is loose at the temperature of the room',
      'bore, shaft',
      'check both sizes',
    );
  const { density, heat, conduction } = metal(name);
  const volume = (Math.PI / 4) * (outside ** 2 - bore ** 2) * width * 1e-9;
  const ring: WarmRing = {
    bore: bore / 1000,
    outside: outside / 1000,
    width: width / 1000,
    heat: density * heat * volume,
    emissivity,
  };
  const area =
    (Math.PI / 2) * (ring.outside ** 2 - ring.bore ** 2) + Math.PI * ring.width * (ring.outside + ring.bore);
  const gapAt = (celsius: number) => ((bore * (1 + perDegree * (celsius - 20)) - shaft) / 2) * 1e-3;
  return answer({
    gripsAt,
    carried: coolingCurve(ring, heatedTo, gripsAt, room, undefined),
    on: coolingCurve(ring, heatedTo, gripsAt, room, gapAt),
    biot: (heatLoss(heatedTo, room, ring.outside, emissivity) * (volume / area)) / conduction,
  });
};

export const gripTimeReckoning: Reckoning = {
  name: 'grip-time',
  title: 'Seconds in hand before a warm hub grips: carried through the air, and once on the shaft',
  inputs: [
    quantityInput('bore', 'length', 'bore of the hub at 20 °C', 'above 0', '49.970mm'),
    quantityInput('shaft', 'length', 'shaft at 20 °C', 'within a fiftieth of the bore', '50.030mm'),
    quantityInput('outside', 'length', 'outside of the hub', 'above the bore', '84mm'),
    quantityInput('width', 'length', 'width of the hub', 'above 0', '40mm'),
    quantityInput(
      'heated-to',
      'temperature',
      'temperature at which the hub leaves the oven',
      'above that at which it slips on',
      '240°C',
    ),
    quantityInput(
      'room',
      'temperature',
      'temperature of the room and of the shaft',
      '-30 °C to 60 °C',
      '20°C',
      { unlessGiven: '20 °C' },
    ),
    quantityInput(
      'clearance',
      'length',
      'clearance on the diameter that must be left to slide',
      '0 and up',
      '0.01mm',
      { unlessGiven: '0 mm' },
    ),
    quantityInput(
      'emissivity',
      'ratio',
      'how well the surface radiates: polished 0.1, oxidised 0.8',
      '0 to 1',
      '0.8',
      { unlessGiven: '0.8' },
    ),
    textInput('hub', 'what the hub is made of', 'steel', { oneOf: metals, unlessGiven: 'steel' }),
  ],
  formula:
    'm c dT/dt = −(h A (T − room) + k A / gap (T − room)); h by convection and radiation; grips where bore (1 + α (T − 20)) = shaft + clearance',
  source:
    'lumped heat; S. W. Churchill and H. H. S. Chu (1975); Stefan and Boltzmann; air: handbook table, from memory',
  reckon: (values) => {
    const found = gripping(values);
    if (found.kind === 'refused') return found;
    const { gripsAt, carried, on, biot } = found.value;
    const tenths = (value: number) => Number(value.toFixed(1));
    return answer({
      results: {
        'grips-at': { value: tenths(gripsAt), unit: '°C' },
        'seconds-carried': { value: tenths(seconds(carried)), unit: 's' },
        'seconds-on-shaft': { value: tenths(seconds(on)), unit: 's' },
        biot: { value: Number(biot.toPrecision(3)), unit: '1' },
      },
      notes: [
        ...(biot > 0.1
          ? ['So thick a hub is hotter inside than out (Biot number above 0.1): its bore lags behind.']
          : []),
        'On the shaft the gap is taken as even and the shaft as cold throughout: a hub that touches on one side grips sooner. Count on half of it.',
        'A draught, a cold bench or tongs cool it faster. Try the way cold first, with a stop in place.',
      ],
    });
  },
};
