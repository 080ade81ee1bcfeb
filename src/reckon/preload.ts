/** @module The tension that a torque leaves in a bolt, between the friction that may be, against what the bolt bears. */
import type { Fastener } from '../engine/fastener.ts';
import { pitchDiameter, proofLoad, stressArea, type Thread, tension, threadOf } from '../engine/thread.ts';
import { newtonMetres } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning } from './reckoning.ts';

const classes = ['8.8', '10.9', '12.9'] as const satisfies readonly Fastener['class'][];

/** Least yield stress, MPa. source: ISO 898-1; class 8.8 changes above 16 mm. */
const yieldStress = (diameter: number, grade: Fastener['class']): number => {
  switch (grade) {
    case '8.8':
      return diameter <= 16 ? 640 : 660;
    case '10.9':
      return 940;
    case '12.9':
      return 1100;
    default:
      return grade satisfies never;
  }
};

/**
 * Tension at which pull and twist together use nine tenths of a bolt's yield stress.
 *
 * F = 0.9 Rp A₀ / √(1 + 3 (1.5 (d₂ / d₀) (P / (π d₂) + 1.155 µ))²), A₀ on d₀ = (d₂ + d₃) / 2
 *
 * @param thread    diameter and pitch, mm
 * @param grade     property class
 * @param friction  in the thread, 0 to 0.5
 * @returns N; the more friction, the less
 * @source  VDI 2230 Part 1, permitted assembly preload
 * @example assemblyLimit({ diameter: mm(12), pitch: mm(1.75) }, '8.8', 0.14) // 41981 N
 */
export const assemblyLimit = (thread: Thread, grade: Fastener['class'], friction: number): number => {
  const pitch = pitchDiameter(thread);
  const area = stressArea(thread);
  const mean = Math.sqrt((4 * area) / Math.PI);
  const twist = 1.5 * (pitch / mean) * (thread.pitch / (Math.PI * pitch) + 1.155 * friction);
  return (0.9 * yieldStress(thread.diameter, grade) * area) / Math.sqrt(1 + 3 * twist ** 2);
};

/** Friction by the state of the thread. source: VDI 2230 Part 1, friction classes A, B and C, from memory. */
const frictionOf = { compound: [0.04, 0.1], oiled: [0.08, 0.16], dry: [0.14, 0.24] } as const;
const states = Object.keys(frictionOf) as readonly (keyof typeof frictionOf)[];

/** Greatest over least tension by the way of tightening. source: VDI 2230:1986, the wider end of each. */
const tighteningFactor = {
  'torque wrench': 1.8,
  'torque wrench, torque found by test': 1.6,
  'angle or yield': 1.4,
  'power driver': 2.5,
  'impact driver': 4,
} as const;
const ways = Object.keys(tighteningFactor) as readonly (keyof typeof tighteningFactor)[];

export const preloadReckoning: Reckoning = {
  name: 'preload',
  title:
    'Tension that a torque leaves in a bolt, by state of the thread and way of tightening, against what it bears',
  inputs: [
    textInput('thread', 'metric thread', 'M12', { range: 'M6, M12, M12x1.25 …' }),
    textInput('class', 'property class, on the head', '8.8', { oneOf: classes }),
    quantityInput(
      'torque',
      'torque',
      'torque, as the manual gives it for this state of the thread',
      'above 0',
      '93N·m',
    ),
    textInput('state', 'state of the thread: it goes with the torque and is never converted', 'oiled', {
      oneOf: states,
    }),
    quantityInput(
      'least-friction',
      'ratio',
      'least coefficient of friction, where it is known better',
      '0.02 to 0.5',
      '0.10',
      { optional: true },
    ),
    quantityInput('greatest-friction', 'ratio', 'greatest coefficient of friction', '0.02 to 0.5', '0.14', {
      optional: true,
    }),
    textInput('way', 'way of tightening', 'torque wrench', { oneOf: ways, unlessGiven: 'torque wrench' }),
  ],
  formula:
    'F = T / (P / 2π + µ d₂ / (2 cos 30°) + µ DKm / 2), DKm = 1.25 d; proof load = Sp As; F at 90 % of yield with twist; least by the way of tightening = greatest / αA',
  source: 'VDI 2230 Part 1 (torque, friction classes and αA of 1986, partly from memory); ISO 898-1; ISO 724',
  reckon: (values) => {
    const thread = threadOf((values.texts.thread ?? '').replace('×', 'x'));
    if (thread === undefined)
      return refuse(
        'the thread is not understood',
        `thread=${(values.texts.thread ?? '').slice(0, 30)}`,
        'write M12, or M12x1.25 for a fine one',
      );
    const grade = classes.find((each) => each === values.texts.class) ?? '8.8';
    const state = states.find((each) => each === values.texts.state) ?? 'dry';
    const way = ways.find((each) => each === values.texts.way) ?? 'torque wrench';
    const torque = quantityOf(values, 'torque').value;
    if (!(torque > 0 && torque < 1e5))
      return refuse(`a torque of ${torque} N·m is out of range`, 'torque', 'give it above 0');
    const least = values.quantities['least-friction']?.value ?? frictionOf[state][0];
    const greatest = values.quantities['greatest-friction']?.value ?? frictionOf[state][1];
    if (!(least >= 0.02 && least <= greatest && greatest <= 0.5))
      return refuse(
        'no thread has such a friction',
        'least-friction, greatest-friction',
        'give 0.02 to 0.5, the least first',
      );
    const [most, fewest] = [
      tension(thread, newtonMetres(torque), least),
      tension(thread, newtonMetres(torque), greatest),
    ];
    const proof = proofLoad(thread, grade);
    const bears = assemblyLimit(thread, grade, least);
    const byWay = most / tighteningFactor[way];
    const kN = (newtons: number) => ({ value: Number((newtons / 1000).toPrecision(6)), unit: 'kN' });
    return answer({
      results: {
        least: kN(Math.min(fewest, byWay)),
        greatest: kN(most),
        'least-by-friction': kN(fewest),
        'least-by-way': kN(byWay),
        'proof-load': kN(proof),
        'of-proof-load': { value: Number(((100 * most) / proof).toPrecision(4)), unit: '%' },
        'bears-with-twist': kN(bears),
      },
      notes: [
        ...(most > proof
          ? ['At the least friction this torque is past the proof load: the bolt stretches for good.']
          : most > bears
            ? ['At the least friction pull and twist together pass nine tenths of yield.']
            : []),
        `${formatFigure(most / Math.min(fewest, byWay), 1)} times between the least and the greatest tension: the torque alone does not fix it.`,
        'The manual’s torque holds for its own state of the thread. A dry figure on an oiled thread overstretches it; nothing converts the one to the other.',
      ],
    });
  },
};
