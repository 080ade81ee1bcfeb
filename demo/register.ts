/** @module The invented workshop's register: what it says of itself, each instrument entered, calibrated, and held against its zero or a master. */

import { refusalText } from '../src/quantity/refusal.ts';
import type { Typed } from '../src/quantity/typed.ts';
import type { RegisterRequest } from '../src/register/command.ts';
import { decideRegister } from '../src/register/decide.ts';
import { type Described, type RegisterEvent, registerId } from '../src/register/event.ts';
import { emptyRegister, evolveRegister } from '../src/register/evolve.ts';
import { bench, foreman, shop } from './people.ts';
import { idAt } from './story.ts';

const entered = Date.parse('2026-02-16T08:00:00Z');
const zeroed = Date.parse('2026-09-01T08:00:00Z');
const minute = 60_000;
const story = 99;

const mm = (text: string): Typed => ({ text, unit: 'mm' });
const torque = (text: string): Typed => ({ text, unit: 'N·m' });
const angle = (text: string): Typed => ({ text, unit: 'deg' });
const mass = (text: string): Typed => ({ text, unit: 'g' });
const force = (text: string): Typed => ({ text, unit: 'N' });

type Row = readonly [
  name: string,
  kind: string,
  least: string,
  greatest: string,
  resolution: string,
  permissibleError: string,
  repeatability: string,
  zero: string,
  turn?: string,
];

const rows: readonly Row[] = [
  ['mic-0-25', 'outside micrometer', '0', '25', '0.01', '0.004', '0.001', '0.000', '0.5'],
  ['mic-25-50', 'outside micrometer', '25', '50', '0.001', '0.004', '0.001', '0.001', '0.5'],
  ['mic-50-75', 'outside micrometer', '50', '75', '0.001', '0.004', '0.001', '-0.002', '0.5'],
  ['mic-75-100', 'outside micrometer', '75', '100', '0.001', '0.005', '0.001', '0.000', '0.5'],
  ['bore-35-160', 'bore gauge', '35', '160', '0.001', '0.004', '0.0015', '0.001', '1'],
  ['depth-0-100', 'depth gauge', '0', '100', '0.01', '0.010', '0.005', '0.00', '0.5'],
  ['dial-0-12', 'dial gauge', '0', '12', '0.01', '0.010', '0.003', '0.00', '1'],
  ['dial-0-1', 'dial gauge', '0', '1', '0.001', '0.003', '0.001', '0.000', '0.2'],
  ['feelers', 'feeler set', '0.03', '1.5', '0.01', '0.005', '0.005', '0.00'],
  ['bore-6-12', 'bore gauge', '6', '12', '0.001', '0.003', '0.001', '0.000'],
  ['caliper-0-150', 'caliper', '0', '150', '0.01', '0.030', '0.010', '0.00'],
];

const described = ([name, kind, ...figures]: Row): Described => {
  const [least, greatest, resolution, permissibleError, repeatability, , turn] = figures;
  return {
    name,
    kind,
    range: { least: mm(least), greatest: mm(greatest) },
    resolution: mm(resolution),
    permissibleError: mm(permissibleError),
    repeatability: mm(repeatability),
    ...(turn === undefined ? {} : { turn: mm(turn) }),
  };
};

const wrench = (
  name: string,
  least: string,
  greatest: string,
  resolution: string,
  permissibleError: string,
  repeatability: string,
): Described => ({
  name,
  kind: 'torque wrench',
  range: { least: torque(least), greatest: torque(greatest) },
  resolution: torque(resolution),
  permissibleError: torque(permissibleError),
  repeatability: torque(repeatability),
});

/** Nothing is read with these in the jobs: one is a master, some tighten, one presses springs, one weighs. */
const others: readonly Described[] = [
  described(['ring-80', 'setting ring', '80.000', '80.000', '0', '0.002', '0', '']),
  wrench('wrench-8-60', '8', '60', '0.5', '2.4', '0.6'),
  wrench('wrench-40-200', '40', '200', '1', '8', '2'),
  wrench('wrench-100-400', '100', '400', '2', '16', '4'),
  {
    name: 'springs-0-600',
    kind: 'spring tester',
    range: { least: force('0'), greatest: force('600') },
    resolution: force('1'),
    permissibleError: force('3'),
    repeatability: force('1'),
  },
  {
    name: 'scales-0-5',
    kind: 'scales',
    range: { least: mass('0'), greatest: mass('5000') },
    resolution: mass('1'),
    permissibleError: mass('2'),
    repeatability: mass('1'),
  },
  {
    name: 'degree-disc',
    kind: 'protractor',
    range: { least: angle('0'), greatest: angle('360') },
    resolution: angle('0.1'),
    permissibleError: angle('0.2'),
    repeatability: angle('0.1'),
  },
];

/** Held against another thing than its own zero. */
const masters: Readonly<Record<string, string>> = {
  'bore-35-160': 'ring-80',
  'bore-6-12': 'mic-0-25',
  feelers: 'mic-0-25',
};

/** Its certificate ran out between two jobs, and nobody saw it. */
const forgotten = 'depth-0-100';
const yearly = { on: '2026-02-10', due: '2027-02-09' };
const lastYear = { on: '2025-10-14', due: '2026-10-13' };

interface Written {
  readonly at: number;
  readonly request: RegisterRequest;
}

/** What the workshop says of itself: its taxes are as invented as its crowns. */
const workshop: RegisterRequest = {
  kind: 'describe workshop',
  workshop: {
    name: shop,
    address: ['Slip Lane 3', 'Nether Saltmarsh'],
    currency: 'crowns',
    taxes: [{ name: 'sales tax', rate: { text: '12', unit: '%' } }],
    labourRate: 4200,
    labour: [
      { says: 'strip, clean and measure', cents: 18_000 },
      { says: 'run in and test', cents: 9500 },
    ],
    validDays: 30,
    terms: 'A third is due when work begins, the rest on collection. Parts taken out go back to the owner.',
  },
};

const entering = (instrument: Described, at: number): readonly Written[] => [
  { at: entered + at * minute, request: { kind: 'enter instrument', instrument } },
  {
    at: entered + (at + 60) * minute,
    request: {
      kind: 'calibrate instrument',
      name: instrument.name,
      certificate: `SB-${114 + at}`,
      ...(instrument.name === forgotten ? lastYear : yearly),
      foundGood: true,
      note: 'certificate filed',
    },
  },
];

const checking = ([name, , , , , , , zero]: Row, at: number): Written => ({
  at: zeroed + at * minute,
  request: {
    kind: 'check instrument',
    name,
    against: masters[name] ?? 'zero',
    showed: mm(zero),
    good: true,
    note: '',
  },
});

/** The disc has no zero of its own: its pointer is set on the engine. */
const discSet: Written = {
  at: zeroed + rows.length * minute,
  request: {
    kind: 'check instrument',
    name: 'degree-disc',
    against: 'zero',
    showed: angle('0.0'),
    good: true,
    note: 'pointer set to top dead centre by equal drop',
  },
};

/** Entered and calibrated in spring, held against its zero or master in autumn. */
const written: readonly Written[] = [
  { at: entered - 30 * minute, request: workshop },
  ...[...rows.map(described), ...others].flatMap(entering),
  ...rows.map(checking),
  discSet,
].sort((a, b) => a.at - b.at);

const told = (): readonly RegisterEvent[] => {
  const events: RegisterEvent[] = [];
  let register = emptyRegister;
  for (const { at, request } of written) {
    const event = decideRegister(register, {
      id: idAt(at, events.length + 1, story),
      job: registerId,
      at: new Date(at).toISOString(),
      actor: foreman,
      bench,
      request,
    });
    if (event.kind === 'refused') throw new Error(`the register: ${refusalText(event.refusal)}`);
    events.push(event.value);
    register = evolveRegister(register, event.value);
  }
  return events;
};

/** The register's journal, the same at every telling. */
export const registerEvents: readonly RegisterEvent[] = told();
