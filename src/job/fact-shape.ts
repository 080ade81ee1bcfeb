/** @module The shape of every kind of fact, in every version ever written: what stored and sent text is checked by. */
import { z } from 'zod';
import { factReader, now } from '../journal/fact-reader.ts';
import { note, plain, signature, typed, words } from '../journal/shape.ts';
import { day, instrumentShape } from '../register/instrument-shape.ts';
import { slipChance } from '../register/slip-chance-shape.ts';
import type { Fact, FactKind } from './event.ts';
import { choice, offerShape } from './offer-shape.ts';
import { runShapes } from './run-shape.ts';

const count = z.int().min(0).max(1_000_000);

const cell = z.strictObject({ place: words, characteristic: words, plane: words, axis: words });
const instrumentFirst = z.strictObject({
  name: words,
  kind: words,
  range: z.strictObject({ least: typed, greatest: typed }),
  resolution: typed,
  permissibleError: typed,
  repeatability: typed,
  zero: typed.exactOptional(),
  turn: typed.exactOptional(),
  setTo: z.strictObject({ master: words, size: typed, shown: typed }).exactOptional(),
  correction: typed.exactOptional(),
  correctionUncertainty: typed.exactOptional(),
  material: z.enum(['steel', 'cast iron', 'aluminium', 'bronze']).exactOptional(),
});
const rule = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('guarded'), conformance: z.number() }),
  z.strictObject({ kind: z.literal('simple'), ratio: z.number() }),
  z.strictObject({ kind: z.literal('shared risk'), conformance: z.number() }),
]);
const findingFirst = z.strictObject({
  place: words,
  component: words,
  finding: z.enum(['scored', 'pitted', 'blued', 'cracked', 'corroded', 'worn', 'sound']),
  mayGoBack: z.boolean(),
  says: note,
});

const formerFirst = z.strictObject({
  number: words,
  on: day,
  hoursRun: typed,
  cells: z
    .array(
      z.strictObject({
        cell,
        anew: z.boolean(),
        size: typed.exactOptional(),
        expanded: typed.exactOptional(),
      }),
    )
    .max(20_000),
});

const sizeFoundFirst = z.strictObject({ component: words, size: words });

const agreedFirst = z.strictObject({ name: words, how: note });
const crackTest = z.strictObject({
  by: z.enum(['dye penetrant', 'magnetic particles', 'pressure']),
  showed: z.enum(['no crack', 'a crack']),
});
const money = z.int().min(-1_000_000_000).max(1_000_000_000);
const places = z.array(words).max(200);
const orderedLine = z.strictObject({
  line: plain(600),
  says: note,
  does: z.enum(['machine', 'sleeve', 'build up', 'replace', 'exchange']).exactOptional(),
  component: words.exactOptional(),
  size: words.exactOptional(),
  places,
  count,
  cents: money,
});
const ofOrder = { order: words, line: plain(600) };

const operationDoneFirst = z.strictObject({ operation: words, note });
const partReading = z.strictObject({
  typed,
  instrument: words,
  temperature: typed.exactOptional(),
  instrumentTemperature: typed.exactOptional(),
});

const shapes = {
  'booked in': z.strictObject({
    number: words,
    engineType: plain(2_000_000),
    shop: words.exactOptional(),
    owner: words,
    plate: words,
    hoursRun: typed,
    complaint: note,
    currency: words,
    conformance: z.number(),
    rule: rule.exactOptional(),
    hoursWanted: typed.exactOptional(),
    daysWanted: z.number().exactOptional(),
  }),
  'slip chances brought': z.strictObject({ chances: z.array(slipChance).max(100) }),
  'former overhaul brought': formerFirst.extend({
    sizes: z
      .array(z.strictObject({ component: words, place: words, size: words }))
      .max(2000)
      .exactOptional(),
  }),
  'scope set': z.strictObject({
    reach: z.array(words).max(400),
    also: z.array(words).max(400).exactOptional(),
    says: note,
  }),
  'instrument brought': z.strictObject({ instrument: instrumentShape }),
  'reading taken': z.strictObject({
    cell,
    typed,
    instrument: words,
    temperature: typed.exactOptional(),
    instrumentTemperature: typed.exactOptional(),
  }),
  'reading struck out': z.strictObject({ reading: words, why: note }),
  'doubt answered': z.strictObject({ doubt: plain(2000), why: note }),
  'size found': sizeFoundFirst.extend({ place: words.exactOptional() }),
  'finding noted': findingFirst.extend({
    grade: z.enum(['slight', 'marked', 'severe']).exactOptional(),
    crackTest: crackTest.exactOptional(),
    hardness: words.exactOptional(),
  }),
  'picture taken': z.strictObject({
    picture: z.strictObject({
      hash: z.string().regex(/^[0-9a-f]{64}$/, 'a hash is 64 small hexadecimal digits'),
      mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp']),
      width: count,
      height: count,
      bytes: z.int().min(0).max(1_000_000_000),
    }),
    of: z.strictObject({
      place: words.exactOptional(),
      operation: words.exactOptional(),
      finding: words.exactOptional(),
    }),
    says: note,
  }),
  'picture struck out': z.strictObject({ picture: words, why: note }),
  'shims counted': z.strictObject({
    shims: z.array(z.strictObject({ thickness: typed, count })).max(200),
  }),
  'plan chosen': z.strictObject({
    choices: z.array(choice).max(1000),
    cents: z.int(),
    days: z.number(),
    hours: z.number(),
  }),
  'offer made': offerShape,
  'owner agreed': agreedFirst.extend({
    offer: z
      .strictObject({ number: z.int().min(1), plan: z.string().max(1), by: z.enum(['link', 'note']) })
      .exactOptional(),
  }),
  'order placed': z.strictObject({
    order: words,
    supplier: words,
    lines: z.array(orderedLine).max(1000),
    charges: z.array(z.strictObject({ says: note, cents: money })).max(200),
    due: day,
    note,
  }),
  'delivery received': z.strictObject({
    order: words,
    lines: z.array(z.strictObject({ line: plain(600), count })).max(1000),
    note,
  }),
  'certificate noted': z.strictObject({
    ...ofOrder,
    certificate: words,
    crackTest: crackTest.exactOptional(),
  }),
  'line sent back': z.strictObject({ ...ofOrder, count, places, why: note }),
  'line accepted': z.strictObject({ ...ofOrder, why: note }),
  'part measured': z.strictObject({
    component: words,
    part: words,
    size: words,
    half: words.exactOptional(),
    readings: z.array(partReading).min(1).max(24),
  }),
  'part set aside': z.strictObject({ component: words, part: words, why: note }),
  'parts assigned': z.strictObject({
    component: words,
    places: z
      .array(z.strictObject({ place: words, parts: z.array(words).min(1).max(2) }))
      .min(1)
      .max(100),
  }),
  'pack fitted': z.strictObject({ place: words, shims: z.array(typed).max(50) }),
  'ask answered': z.strictObject({
    operation: words,
    ask: words,
    place: words.exactOptional(),
    good: z.boolean(),
    says: note,
    count: count.exactOptional(),
  }),
  'operation done': operationDoneFirst.extend({
    overruled: z
      .strictObject({ by: words, why: note, lacking: z.array(note).min(1).max(1000) })
      .exactOptional(),
  }),
  'stage tightened': z.strictObject({
    operation: words,
    fastener: words,
    place: words,
    stage: z.int().min(0).max(100),
    bolts: z.array(words).min(1).max(200),
    threadState: z.enum(['dry', 'oiled', 'compound']),
    wrench: words.exactOptional(),
    adapter: z.strictObject({ wrench: typed, adapter: typed, angle: typed.exactOptional() }).exactOptional(),
    boltsAre: z.enum(['new', 'used']).exactOptional(),
    longest: typed.exactOptional(),
    overruled: z.strictObject({ by: words, why: note }).exactOptional(),
    note,
  }),
  'work begun': z.strictObject({ operation: words }),
  'work stopped': z.strictObject({ operation: words, why: note, endedAt: signature.at.exactOptional() }),
  'operation reopened': z.strictObject({ operation: words, why: note }),
  'sum noted': z.strictObject({
    operation: words,
    sum: words,
    place: words.exactOptional(),
    inputs: z
      .array(z.strictObject({ key: words, text: plain(5000), from: plain(1000).exactOptional() }))
      .max(100),
    found: z.array(z.strictObject({ key: words, text: plain(1000) })).max(500),
    fitted: note.exactOptional(),
    note,
  }),
  'part homed': z.strictObject({ part: words, place: words, operation: words.exactOptional() }),
  'part strayed': z.strictObject({
    parts: z.array(words).min(1).max(64),
    how: z.enum(['lost', 'unmarked', 'swapped']),
    says: note,
  }),
  'home decided': z.strictObject({ part: words, place: words.exactOptional(), decidedBy: words, why: note }),
  'run step logged': z.strictObject({
    speed: typed,
    load: typed,
    minutes: z.number(),
    oilPressure: typed.exactOptional(),
    waterTemperature: typed.exactOptional(),
    note,
  }),
  ...runShapes,
  'handed over': z.strictObject({ to: words, note }),
} satisfies { readonly [Kind in FactKind]: z.ZodType<Omit<Extract<Fact, { kind: Kind }>, 'kind'>> };

/** A fact as the shapes have it; a test holds it to be the same as `Fact`. */
export type ShapedFact = { [Kind in FactKind]: { kind: Kind } & z.infer<(typeof shapes)[Kind]> }[FactKind];

/**
 * Readers of each kind of fact by version, version 1 first. A new version adds its shape to `shapes`, moves the old
 * one into its reader here, and that reader turns the old body into the new one. Nothing is ever taken out.
 */
export const facts = factReader<Fact>({
  'booked in': [now(shapes['booked in'])],
  'slip chances brought': [now(shapes['slip chances brought'])],
  'former overhaul brought': [
    // Before it told at which sizes parts were left.
    now(formerFirst),
    now(shapes['former overhaul brought']),
  ],
  'scope set': [now(shapes['scope set'])],
  'instrument brought': [
    // Before masters, certificates and checks were written down.
    now(z.strictObject({ instrument: instrumentFirst })),
    now(shapes['instrument brought']),
  ],
  'reading taken': [now(shapes['reading taken'])],
  'reading struck out': [now(shapes['reading struck out'])],
  'doubt answered': [now(shapes['doubt answered'])],
  'size found': [
    // Before one place could be of another size than the others.
    now(sizeFoundFirst),
    now(shapes['size found']),
  ],
  'finding noted': [
    // Before grades, crack tests and hardness were written down.
    now(findingFirst),
    now(shapes['finding noted']),
  ],
  'picture taken': [now(shapes['picture taken'])],
  'picture struck out': [now(shapes['picture struck out'])],
  'shims counted': [now(shapes['shims counted'])],
  'plan chosen': [now(shapes['plan chosen'])],
  'offer made': [now(shapes['offer made'])],
  'owner agreed': [
    // Before offers were made.
    now(agreedFirst),
    now(shapes['owner agreed']),
  ],
  'order placed': [now(shapes['order placed'])],
  'delivery received': [now(shapes['delivery received'])],
  'certificate noted': [now(shapes['certificate noted'])],
  'line sent back': [now(shapes['line sent back'])],
  'line accepted': [now(shapes['line accepted'])],
  'part measured': [now(shapes['part measured'])],
  'part set aside': [now(shapes['part set aside'])],
  'parts assigned': [now(shapes['parts assigned'])],
  'pack fitted': [now(shapes['pack fitted'])],
  'ask answered': [now(shapes['ask answered'])],
  'operation done': [
    // Before anybody could overrule what was lacking.
    now(operationDoneFirst),
    now(shapes['operation done']),
  ],
  'stage tightened': [now(shapes['stage tightened'])],
  'work begun': [now(shapes['work begun'])],
  'work stopped': [now(shapes['work stopped'])],
  'operation reopened': [now(shapes['operation reopened'])],
  'sum noted': [now(shapes['sum noted'])],
  'part homed': [now(shapes['part homed'])],
  'part strayed': [now(shapes['part strayed'])],
  'home decided': [now(shapes['home decided'])],
  'run step logged': [now(shapes['run step logged'])],
  'run step begun': [now(shapes['run step begun'])],
  'run reading taken': [now(shapes['run reading taken'])],
  'run reading struck out': [now(shapes['run reading struck out'])],
  'fault noted': [now(shapes['fault noted'])],
  'fault put right': [now(shapes['fault put right'])],
  'handed over': [now(shapes['handed over'])],
});
