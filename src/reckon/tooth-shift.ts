/** @module What a timing gear that meshes one tooth out does to each event, and what backlash leaves open. */
import { radians, toDegrees } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Result, type Values } from './reckoning.ts';

/**
 * Crank angle by which all that a gear drives is out when it meshes some teeth out.
 *
 * One tooth of the driven gear turns it by 360 / its teeth; the crank turns by as much times driven over crank teeth.
 * Idlers between change nothing.
 *
 * @param crankTeeth  of the gear on the crankshaft, 5 and up
 * @param teeth       out, plus where the driven gear stands ahead in its own turning
 * @returns degrees of crank; plus is early
 * @source  geometry of meshing gears
 * @example toothShift(24, 1) // 15 deg
 */
export const toothShift = (crankTeeth: number, teeth: number): number => (360 / crankTeeth) * teeth;

export interface TimedEvent {
  readonly name: string;
  /** Degrees of crank from the top before the working stroke, plus after it. */
  readonly at: number;
}

/**
 * Events as they are written: a name and an angle, commas between.
 *
 * @param text  `inlet-opens -12, inlet-closes 220`, degrees of crank
 * @returns the events; refuses what cannot be read
 * @source  none: it reads
 * @example readEvents('inlet-opens') // refused
 */
export const readEvents = (text: string): Answer<readonly TimedEvent[]> => {
  const events: TimedEvent[] = [];
  for (const each of text
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter(Boolean)) {
    const [, name = '', at = ''] = /^([a-z][a-z0-9-]*)\s+(-?\d+(?:\.\d+)?)\s*(?:deg|°)?$/i.exec(each) ?? [];
    if (name === '')
      return refuse(
        `“${each.slice(0, 40)}” is no event`,
        'events',
        'write its name and its angle in degrees of crank: inlet-opens -12',
      );
    events.push({ name, at: Number(at) });
  }
  return events.length === 0 || events.length > 40
    ? refuse('no event was given, or too many', 'events', 'give 1 to 40')
    : answer(events);
};

/**
 * All that the gear drives: events as written, and the spill of a pump before the top.
 *
 * @param values  the sum's own
 * @returns the events; refuses what cannot be read, and where there is none
 * @source  none: it reads
 * @example eventsDriven({ quantities: {}, texts: {} }) // refused
 */
export const eventsDriven = ({ texts, quantities: { spill } }: Values): Answer<readonly TimedEvent[]> => {
  const pump = spill && { name: 'spill', at: -Number(toDegrees(radians(spill.value)).toFixed(9)) };
  if (pump && texts.events === undefined) return answer([pump]);
  const events = readEvents(texts.events ?? '');
  return events.kind === 'refused' || !pump ? events : answer([pump, ...events.value]);
};

/** A whole number of teeth, or why it is none. */
const teethOf = (values: Values, key: string, least: number): Answer<number> => {
  const value = quantityOf(values, key).value;
  return Number.isInteger(value) && Math.abs(value) >= least && Math.abs(value) < 1000
    ? answer(value)
    : refuse(`${value} is no number of teeth`, key, `give a whole number, ${least} and up`);
};

export const toothShiftReckoning: Reckoning = {
  name: 'tooth-shift',
  title: 'What a timing gear that is one tooth out does to every event',
  inputs: [
    quantityInput('crank-teeth', 'count', 'teeth of the gear on the crankshaft', '5 and up', '24'),
    quantityInput(
      'driven-teeth',
      'count',
      'teeth of the gear that is out: on the camshaft, on the pump',
      '5 and up',
      '48',
    ),
    quantityInput(
      'teeth-out',
      'count',
      'teeth out: plus where the driven gear stands ahead',
      'a whole number, either way',
      '1',
      { unlessGiven: '1' },
    ),
    textInput(
      'events',
      'events that it drives, in degrees of crank from the top before the working stroke',
      'injection -18, inlet-opens 348, inlet-closes 580, exhaust-opens 140, exhaust-closes 372',
      { range: 'name and angle, commas between', optional: true },
    ),
    quantityInput(
      'spill',
      'angle',
      'the pump closes its port, crank before the top',
      'any; a pump that the same gear drives',
      '24deg',
      { optional: true },
    ),
    quantityInput('backlash', 'length', 'backlash at the teeth of the driven gear', '0 and up', '0.12mm', {
      optional: true,
    }),
    quantityInput(
      'driven-diameter',
      'length',
      'pitch diameter of the driven gear, for the backlash',
      'above 0',
      '144mm',
      { optional: true },
    ),
  ],
  formula:
    'shift = 360 / crank teeth × teeth out, degrees of crank; backlash: b / (D / 2), times driven over crank teeth',
  source: 'geometry of meshing gears',
  reckon: (values) => {
    const crank = teethOf(values, 'crank-teeth', 5);
    if (crank.kind === 'refused') return crank;
    const driven = teethOf(values, 'driven-teeth', 5);
    if (driven.kind === 'refused') return driven;
    const out = teethOf(values, 'teeth-out', 1);
    if (out.kind === 'refused') return out;
    const events = eventsDriven(values);
    if (events.kind === 'refused') return events;
    const ratio = driven.value / crank.value;
    const shift = toothShift(crank.value, out.value);
    const { backlash, 'driven-diameter': diameter } = values.quantities;
    if ((backlash === undefined) !== (diameter === undefined))
      return refuse(
        'backlash is an angle only with the diameter',
        'backlash, driven-diameter',
        'give both or neither',
      );
    if (backlash && diameter && !(backlash.value >= 0 && diameter.value > 0))
      return refuse(
        'a length less than 0 is out of range',
        'backlash, driven-diameter',
        'leave out its sign',
      );
    const play =
      backlash && diameter ? toDegrees(radians(backlash.value / (diameter.value / 2))) * ratio : undefined;
    const degrees = (value: number): Result => ({ value: Number(value.toFixed(4)), unit: 'deg' });
    return answer({
      results: {
        shift: degrees(shift),
        ...(play !== undefined && { 'play-from-backlash': degrees(play) }),
        ...Object.fromEntries(
          events.value.map(({ name, at }) => [`then.${name.toLowerCase()}`, degrees(at - shift)]),
        ),
      },
      notes: [
        ...(Math.abs(ratio - 2) > 1e-9 && Math.abs(ratio - 1) > 1e-9
          ? ['The driven gear turns neither with the crank nor at half its speed: check the teeth.']
          : []),
        'A gear that stands ahead is early: its events come at a smaller angle of the crank.',
        'Turn twice by hand, feeling for a valve that meets a piston, and look at the marks again before the case is closed.',
      ],
    });
  },
};
