/** @module Clearance of a journal in its shells, before they are fitted: from the housing, the walls and the journal. */
import { answer, refuse } from '../quantity/refusal.ts';
import { certain, combine, plus, type Uncertain } from '../quantity/uncertain.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * Bore of a pair of shells in a housing: housing less both walls, less what their crush draws it in.
 *
 * A shell for a journal ground under size is thicker by half the undersize: the journal is smaller by the whole of it
 * on the diameter, and two walls make up for it.
 *
 * @param housing    bore of the housing, cap tightened, mm
 * @param wall       of one shell at the crown, standard or as measured, mm; two walls of one size share its error
 * @param undersize  mm, 0 where the wall is that of the shell in the hand
 * @param closing    how much tighter the bore is for the shells' crush, on the diameter, mm
 * @returns mm
 * @source  TM 9-2815-205-24, p 0097-6 (wall by undersize); half the undersize to a wall: geometry of a diameter
 * @example shellBore(certain(59), certain(1.98), certain(0.25), certain(0)) // 54.790 mm
 */
export const shellBore = (
  housing: Uncertain,
  wall: Uncertain,
  undersize: Uncertain,
  closing: Uncertain,
): Uncertain =>
  combine([
    [1, housing],
    [-2, wall],
    [-1, undersize],
    [-1, closing],
  ]);

const positive = ['housing', 'journal', 'wall'] as const;
const notNegative = ['undersize', 'closing'] as const;

export const shellClearanceReckoning: Reckoning = {
  name: 'shell-clearance',
  title: 'Clearance of a journal in its shells, from housing, walls and journal',
  inputs: [
    {
      kind: 'quantity',
      key: 'housing',
      title: 'bore of the housing, shells out, cap tightened, square to the joint',
      dimension: 'length',
      range: 'above the journal',
      example: '59.010±0.005mm',
    },
    {
      kind: 'quantity',
      key: 'wall',
      title: 'wall of one shell at the crown, 90° from the joint: as measured, or that of the standard shell',
      dimension: 'length',
      range: 'above 0, both walls less than the housing',
      example: '1.985±0.002mm',
    },
    {
      kind: 'quantity',
      key: 'journal',
      title: 'journal, its least reading',
      dimension: 'length',
      range: 'above 0',
      example: '54.732±0.004mm',
    },
    {
      kind: 'quantity',
      key: 'undersize',
      title: 'undersize of the shells, where the wall given is that of the standard shell',
      dimension: 'length',
      range: '0 and up',
      example: '0.25mm',
      unlessGiven: '0 mm',
    },
    {
      kind: 'quantity',
      key: 'closing',
      title:
        'how much tighter the bore is for the crush of the shells, on the diameter, where the manual says so',
      dimension: 'length',
      range: '0 and up',
      example: '0.005mm',
      unlessGiven: '0 mm',
    },
  ],
  formula: 'clearance = housing − 2 (wall + undersize / 2) − closing − journal',
  source: 'TM 9-2815-205-24, p 0097-6 (wall by undersize); geometry of a diameter',
  reckon: (values) => {
    const [housing, journal, wall] = positive.map((key) => quantityOf(values, key));
    const [undersize, closing] = notNegative.map((key) => quantityOf(values, key));
    if (!housing || !journal || !wall || !undersize || !closing)
      throw new Error('a shell clearance has five inputs');
    const zero = positive.find((key) => !(quantityOf(values, key).value > 0));
    if (zero) return refuse(`a ${zero} of 0 or less is out of range`, zero, 'give its size, above 0');
    const less = notNegative.find((key) => quantityOf(values, key).value < 0);
    if (less) return refuse('a length less than 0 is out of range', less, 'leave out its sign');
    const bore = shellBore(housing, wall, undersize, closing);
    if (!(bore.value > 0))
      return refuse('the walls fill the housing', 'housing, wall', 'check both and their units');
    const gap = combine([
      [1, bore],
      [-1, journal],
    ]);
    return answer({
      results: {
        clearance: result(gap, 'mm'),
        'shell-bore': result(bore, 'mm'),
        wall: result(plus(wall, combine([[0.5, undersize]])), 'mm'),
        'per-shaft': result(certain(gap.value / journal.value), '1'),
      },
      notes: [
        ...(gap.value < 0 ? ['The journal is the larger: these are the wrong shells.'] : []),
        'Measure the bore with the shells fitted and the cap tightened, or a crush strip, before it is covered up.',
      ],
    });
  },
};
