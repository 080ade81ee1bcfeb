/** @module The shim packs by name: needs and box read from lists, packs with errors in millimetres and degrees. */
import { mm, radians, toDegrees } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { amountOf, readTyped } from '../quantity/typed.ts';
import { certain } from '../quantity/uncertain.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';
import { type BoxShim, chooseShims, type PackNeed, type PackSet } from './shim-pack.ts';

const longestList = 400;

const entriesOf = (values: Values, key: string): Answer<readonly string[]> => {
  const entries = (values.texts[key] ?? '').split(/[,;]/).map((entry) => entry.trim());
  const empty = entries.indexOf('');
  if (empty >= 0) {
    return refuse(`entry ${empty + 1} of ${key} is empty`, key, 'put commas between entries only');
  }
  return entries.length > longestList
    ? refuse(`${key} has ${entries.length} entries`, key, `give at most ${longestList}`)
    : answer(entries);
};

const lengthIn = (key: string, entry: string, text: string): Answer<number> => {
  const typed = readTyped(text, 'length');
  const read = typed.kind === 'refused' ? typed : amountOf(typed.value, 'length');
  return read.kind === 'refused'
    ? refuse(
        read.refusal.what,
        `${key}, ${entry.slice(0, 40)}`,
        `${read.refusal.remedy}; commas part the entries, so write a point in the figure: 0.10mm`,
      )
    : read;
};

const needsOf = (values: Values): Answer<readonly PackNeed[]> => {
  const entries = entriesOf(values, 'needed');
  if (entries.kind === 'refused') return entries;
  const needs: PackNeed[] = [];
  for (const [at, entry] of entries.value.entries()) {
    const needed = lengthIn('needed', entry, entry);
    if (needed.kind === 'refused') return needed;
    needs.push({ pump: `pump.${at + 1}`, needed: mm(needed.value) });
  }
  return answer(needs);
};

const boxOf = (values: Values): Answer<readonly BoxShim[]> => {
  const entries = entriesOf(values, 'box');
  if (entries.kind === 'refused') return entries;
  const box: BoxShim[] = [];
  for (const entry of entries.value) {
    const [text = '', count = '1', ...more] = entry.split(/[*×]/);
    const thickness = lengthIn('box', entry, text);
    if (thickness.kind === 'refused') return thickness;
    if (more.length > 0 || !/^\s*\d{1,6}\s*$/.test(count)) {
      return refuse(
        `${count.trim()} is no count of shims`,
        `box, ${entry.slice(0, 40)}`,
        'write thickness*count, such as 0.10mm*6; without a count it is one shim',
      );
    }
    box.push({ thickness: mm(thickness.value), count: Number(count) });
  }
  return answer(box);
};

const inMillimetres = (length: number): Result => result(certain(length), 'mm');
const inDegrees = (angle: number): Result => result(certain(toDegrees(radians(angle))), 'deg');

const resultsOf = ({ packs, greatestError, spread, shimsUsed }: PackSet, rate: number) => {
  const results: Record<string, Result> = {
    'greatest-error': inMillimetres(greatestError),
    'greatest-timing-error': inDegrees(greatestError * rate),
    spread: inMillimetres(spread),
    'timing-spread': inDegrees(spread * rate),
    'shims-used': result(certain(shimsUsed), '1'),
  };
  for (const { pump, shims, thickness, error, timingError } of packs) {
    const stack = shims.map((shim) => String(result(certain(shim), 'mm').value)).join(' + ');
    results[`${pump}.shims`] = { value: stack === '' ? 'none' : stack, unit: 'mm' };
    results[`${pump}.thickness`] = inMillimetres(thickness);
    results[`${pump}.error`] = inMillimetres(error);
    results[`${pump}.timing-error`] = inDegrees(timingError);
  }
  return results;
};

export const shimPackReckoning: Reckoning = {
  name: 'shim-pack',
  title: 'Shim packs for all pumps together, from the shims in the box',
  inputs: [
    {
      kind: 'text',
      key: 'needed',
      title: 'pack needed for each pump in turn: the datum dimension less the depth measured',
      range: '0 and above, with commas between',
      example: '1.23mm,1.31mm,1.18mm',
    },
    {
      kind: 'text',
      key: 'box',
      title: 'shims in the box: each thickness, nominal or measured, times how many there are',
      range: 'above 0 up to 20 mm, with commas between',
      example: '0.10mm*6,0.15mm*6,0.20mm*4,0.50mm*6',
    },
    {
      kind: 'quantity',
      key: 'most',
      title: 'most shims in one pack',
      dimension: 'count',
      range: '1, 2, 3 …',
      example: '4',
    },
    {
      kind: 'quantity',
      key: 'rate',
      title: 'crank angle for each millimetre of shim',
      dimension: 'angle-per-length',
      range: 'above 0',
      example: '2.6deg/mm',
    },
    {
      kind: 'text',
      key: 'adding',
      title: 'what adding shims does: retards (most shims under a pump flange) or advances',
      range: 'retards or advances, from the manual and proved on the engine',
      example: 'retards',
      oneOf: ['retards', 'advances'],
    },
  ],
  formula:
    'error = pack − needed; least greatest |error|, then least spread, then fewest shims, then least sum of |error|; timing error = error × rate, minus (late) where adding retards',
  source: 'every set of packs weighed by branch and bound; ranks: common practice, no source',
  reckon: (values) => {
    const needs = needsOf(values);
    if (needs.kind === 'refused') return needs;
    const box = boxOf(values);
    if (box.kind === 'refused') return box;
    const addingShims = values.texts.adding === 'advances' ? 'advances' : 'retards';
    const rate = quantityOf(values, 'rate').value;
    const set = chooseShims({
      needs: needs.value,
      box: box.value,
      mostShims: quantityOf(values, 'most').value,
      rate: radians(rate),
      addingShims,
    });
    if (set.kind === 'refused') return set;
    return answer({
      results: resultsOf(set.value, rate),
      notes: [
        'A timing error above 0 is early, below 0 late.',
        ...set.value.notes,
        'Prove the timing on the engine after fitting: the sign is the one trap of shims.',
      ],
    });
  },
};
