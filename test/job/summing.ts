/** @module A bench whose engine has sums in its operations, up to the laying of the crankshaft. */
import type { RequestOf } from '../../src/job/command.ts';
import { noteSum } from '../../src/job/sum/noted-sum.ts';
import { agreed, type Bench } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

/** The small engine with sums in the laying of its crankshaft and in the fitting of its pumps. */
export const engineWithSums = sparrowbill
  .replace(
    '    needs: [main-journal-diameter, main-journal-ovality]\n',
    `    needs: [main-journal-diameter, main-journal-ovality]
    sums:
      clearance:
        reckon: clearance
        title: clearance in the shells
        each: true
        given:
          shaft: { characteristic: main-journal-diameter }
        keeps: { clearance: { least: 0.030 mm, greatest: 0.080 mm } }
        source: invented, sheet 1
      preload:
        reckon: preload
        optional: true
        given: { thread: M12, class: '8.8', torque: 80 N·m, state: oiled }
`,
  )
  .replace(
    '    needs: [pump-depth]\n',
    `    needs: [pump-depth]
    sums:
      turn: { reckon: piston-travel, given: { stroke: { engine: stroke }, rod: { engine: rod } } }
`,
  );

/** Measured, agreed to and stripped: the crankshaft is to be laid next. */
export const readyToLay = (journal = '49.975'): Bench => {
  const one = agreed(engineWithSums, journal);
  one.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
  return one;
};

export const clearance = { operation: 'lay-crankshaft', sum: 'clearance', place: 'main.1' };

/** What is asked to note a clearance with a bore as typed. */
export const asked = (one: Bench, bore: string, named = clearance): RequestOf<'note sum'> => {
  const request = noteSum(one.open, named, { bore }, { fitted: 'shells as found', note: '' });
  if (request.kind === 'refused') throw new Error(JSON.stringify(request.refusal));
  return request.value;
};
