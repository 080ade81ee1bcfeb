/** @module What an interference fit holds when cold: pressure, stresses, torque and force before it slips, and whether it yields. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, propagate, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { type Elastic, metal, metalNamed, metals } from './metal.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';

/** Diameters, mm: hole of the inner part (0 where solid), where they meet, outside of the outer part. */
export interface Rings {
  readonly hole: number;
  readonly joint: number;
  readonly outside: number;
}

/**
 * Pressure in the joint of two rings of which the inner is too large by an interference.
 *
 * p = δ / { d [ ((D² + d²) / (D² − d²) + νo) / Eo + ((d² + h²) / (d² − h²) − νi) / Ei ] }
 *
 * @param interference  on the diameter, mm, 0 and up
 * @param rings         hole below joint below outside, mm
 * @param outer         elasticity of the outer part, MPa, and its Poisson's ratio
 * @param inner         those of the inner part
 * @returns MPa, for long rings that stay elastic
 * @source  G. Lamé (1833); thick cylinders in any text on strength of materials
 * @example jointPressure(0.031711, { hole: 20, joint: 40, outside: 60 }, { modulus: 207000, poisson: 0.3 }, { modulus: 207000, poisson: 0.3 }) // 38.46 MPa
 */
export const jointPressure = (interference: number, rings: Rings, outer: Elastic, inner: Elastic): number => {
  const [h2, d2, o2] = [rings.hole ** 2, rings.joint ** 2, rings.outside ** 2];
  const give =
    ((o2 + d2) / (o2 - d2) + outer.poisson) / outer.modulus +
    ((d2 + h2) / (d2 - h2) - inner.poisson) / inner.modulus;
  return interference / (rings.joint * give);
};

/**
 * The greatest stress in the outer part, around its bore.
 *
 * @param pressure  in the joint, MPa
 * @param rings     hole below joint below outside, mm
 * @returns MPa, pulling
 * @source  G. Lamé (1833)
 * @example boreStress(38.4615, { hole: 20, joint: 40, outside: 60 }) // 100.0 MPa
 */
export const boreStress = (pressure: number, { joint, outside }: Rings): number =>
  (pressure * (outside ** 2 + joint ** 2)) / (outside ** 2 - joint ** 2);

/** Greatest push of the inner part around: at its hole where it has one, everywhere where it is solid. */
const shaftStress = (pressure: number, { hole, joint }: Rings): number =>
  hole === 0 ? -pressure : (-2 * pressure * joint ** 2) / (joint ** 2 - hole ** 2);

/** Roughness that is flattened as the parts are joined takes this part of its depth from each diameter's interference. */
const flattened = 0.8;

const sizesOf = (values: Values): Answer<Rings> => {
  const [hole, joint, outside] = ['hole', 'shaft', 'outside'].map((key) => quantityOf(values, key).value) as [
    number,
    number,
    number,
  ];
  if (hole < 0) return refuse('a hole less than 0 is out of range', 'hole', 'give 0 for a solid shaft');
  if (!(hole < joint && joint < outside)) {
    return refuse(
      'the parts do not lie inside one another',
      'hole, shaft, outside',
      'the hole must be smaller than the shaft, the shaft smaller than the outside of the hub',
    );
  }
  return answer({ hole, joint, outside });
};

interface Held {
  readonly pressure: Uncertain;
  readonly torque: Uncertain;
  readonly force: Uncertain;
}

const heldBy = (values: Values, rings: Rings, outer: Elastic, inner: Elastic): Answer<Held> => {
  const inputs = ['shaft', 'bore', 'roughness', 'friction', 'length'].map((key) => quantityOf(values, key));
  const pressureOf = ([shaft = 0, bore = 0, roughness = 0]: readonly number[]) =>
    jointPressure(Math.max(0, shaft - bore - 2 * flattened * roughness), rings, outer, inner);
  const forceOf = (given: readonly number[]) =>
    (given[3] ?? 0) * pressureOf(given) * Math.PI * rings.joint * (given[4] ?? 0);
  const pressure = propagate(pressureOf, inputs);
  if (pressure.kind === 'refused') return pressure;
  const force = propagate(forceOf, inputs);
  if (force.kind === 'refused') return force;
  const torque = propagate((given) => (forceOf(given) * rings.joint) / 2 / 1000, inputs);
  return torque.kind === 'refused'
    ? torque
    : answer({ pressure: pressure.value, torque: torque.value, force: force.value });
};

/** Against yield by the greatest shear (Tresca): the outer part at its bore feels hoop less radial stress. */
const yieldNotes = (values: Values, pressure: number, rings: Rings): readonly string[] => {
  const limit = values.quantities['outer-yield']?.value;
  if (limit === undefined)
    return ['No yield point was given: whether the hub stays elastic was not checked.'];
  const felt = (boreStress(pressure, rings) + pressure) * 1e6;
  return felt <= limit
    ? []
    : [
        `The hub yields at its bore: it feels ${Math.round(felt / 1e6)} MPa of ${Math.round(limit / 1e6)} MPa. Less is held than reckoned, and the bore is larger when it comes off.`,
      ];
};

export const fitPressureReckoning: Reckoning = {
  name: 'fit-pressure',
  title: 'What an interference fit holds when cold: pressure, stresses, torque and push-off force',
  inputs: [
    quantityInput(
      'shaft',
      'length',
      'shaft diameter, measured',
      'above the hole, below the outside',
      '50.050±0.003mm',
    ),
    quantityInput('bore', 'length', 'bore of the hub, measured', 'below the shaft', '50.000±0.003mm'),
    quantityInput(
      'outside',
      'length',
      'outside diameter of the hub: the root of its teeth for a pinion',
      'above the shaft',
      '84mm',
    ),
    quantityInput('hole', 'length', 'hole through the shaft', '0 for a solid one', '0mm', {
      unlessGiven: '0 mm',
    }),
    quantityInput('length', 'length', 'length over which they touch', 'above 0', '40mm'),
    quantityInput('friction', 'ratio', 'coefficient of friction in the joint', '0.05 to 0.4', '0.12±0.02'),
    quantityInput(
      'roughness',
      'length',
      'roughness depth Rz of each surface, flattened as they are joined',
      '0 to 0.05 mm',
      '0.003mm',
      { unlessGiven: '0 mm' },
    ),
    textInput('hub', 'what the hub is made of', 'steel', { oneOf: metals, unlessGiven: 'steel' }),
    textInput('shaft-of', 'what the shaft is made of', 'steel', { oneOf: metals, unlessGiven: 'steel' }),
    quantityInput('outer-yield', 'pressure', 'yield point of the hub', 'above 0', '400MPa', {
      optional: true,
    }),
  ],
  formula:
    'p = δ / (d (((D² + d²)/(D² − d²) + νo)/Eo + ((d² + h²)/(d² − h²) − νi)/Ei)), δ = shaft − bore − 1.6 Rz; hoop = p (D² + d²)/(D² − d²); push-off = µ p π d L; torque = push-off d / 2',
  source: 'G. Lamé (1833); DIN 7190-1 for the flattened roughness; yield by the greatest shear (Tresca)',
  reckon: (values) => {
    const rings = sizesOf(values);
    if (rings.kind === 'refused') return rings;
    const friction = quantityOf(values, 'friction').value;
    const roughness = quantityOf(values, 'roughness').value;
    const length = quantityOf(values, 'length').value;
    if (!(friction >= 0.05 && friction <= 0.4))
      return refuse(
        `a friction of ${friction} is out of range`,
        'friction',
        'give 0.05 to 0.4; 0.12 is usual for dry steel',
      );
    if (!(roughness >= 0 && roughness <= 0.05))
      return refuse('no machined surface is so rough', 'roughness', 'give 0 to 0.05 mm');
    if (!(length > 0))
      return refuse('the joint has no length', 'length', 'give the length over which they touch');
    const [outer, inner] = [metal(metalNamed(values.texts.hub)), metal(metalNamed(values.texts['shaft-of']))];
    const interference = quantityOf(values, 'shaft').value - quantityOf(values, 'bore').value;
    if (!(interference > 0))
      return refuse(
        'the shaft is not larger than the bore: nothing is held',
        'shaft, bore',
        'check both sizes and their signs',
      );
    const held = heldBy(values, rings.value, outer, inner);
    if (held.kind === 'refused') return held;
    const pressure = held.value.pressure.value;
    // Stresses are so many times the pressure.
    const stress = (of: (pressure: number, rings: Rings) => number): Result =>
      result(combine([[of(1, rings.value), held.value.pressure]]), 'MPa');
    const size =
      standardUncertainty(quantityOf(values, 'shaft')) + standardUncertainty(quantityOf(values, 'bore'));
    return answer({
      results: {
        pressure: result(held.value.pressure, 'MPa'),
        'hub-stress': stress(boreStress),
        'shaft-stress': stress(shaftStress),
        torque: result(held.value.torque, 'N·m'),
        'push-off': result(held.value.force, 'kN', 1e-3),
      },
      notes: [
        ...yieldNotes(values, pressure, rings.value),
        ...(size === 0 ? ['Sizes were taken as known exactly: a few thousandths decide what is held.'] : []),
      ],
    });
  },
};
