/** @module The order of work in words and tables for the terminal: operations, what a way in spoils, who does what when. */
import type { Operation } from '../engine/engine-type.ts';
import { durationText } from '../quantity/moment.ts';
import type { FewestChanges } from '../work/fewest-changes.ts';
import type { OpenNow } from '../work/open-now.ts';
import { changesWords, sharedWords } from '../work/order-words.ts';
import type { Reach } from '../work/reach.ts';
import type { InShifts } from '../work/shifts.ts';
import type { SideBySide } from '../work/side-by-side.ts';
import { counted } from './counted.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

export const operationTable = (operations: readonly Operation[]): string =>
  table(
    [
      { head: '', right: true },
      { head: 'Operation' },
      { head: 'What is done' },
      { head: 'Engine lies' },
      { head: 'Special tools' },
      { head: 'People', right: true },
      { head: 'Minutes', right: true },
      { head: 'To be proved first' },
    ],
    operations.map((operation, at) => [
      String(at + 1),
      operation.name,
      operation.title,
      operation.stand ?? 'any way',
      operation.tools.join(', '),
      String(operation.people),
      operation.minutes === undefined ? '' : String(operation.minutes),
      [...operation.needs, ...operation.asks.flatMap(({ reads }) => reads ?? [])].join(', '),
    ]),
  );

const section = (head: string, lines: readonly string[]): string =>
  lines.length === 0 ? '' : `\n${head}\n${lines.map((line) => `  ${plain(line)}\n`).join('')}`;

export const reachText = ({ title, strip, off, spoilt, renew, again, prove }: Reach): string =>
  [
    strip.length === 0
      ? `The ${plain(title)} is open already.\n`
      : `To reach the ${plain(title)}: ${counted(strip.length, 'operation')}\n\n${operationTable(strip)}`,
    section('Comes off', off.length === 0 ? [] : [off.join(', ')]),
    section('New ones needed, as they are used but once', [
      ...spoilt.map(({ item, count }) => `${count} × ${item.title}`),
      ...renew.map((component) => component.title),
    ]),
    again.length === 0 ? '' : `\nTo be fitted and set again\n\n${operationTable(again)}`,
    section('To be proved on the way back', prove.length === 0 ? [] : [prove.join(', ')]),
  ].join('');

export const changesText = (found: FewestChanges): string =>
  `${operationTable(found.order)}\n${changesWords(found)}`;

export const shiftsText = (shared: SideBySide): string => {
  const { shifts } = shared;
  const rows = shifts.map(({ operation, from, to, fitters }) => [
    durationText(from),
    durationText(to),
    fitters.join(' and '),
    operation.name,
    operation.title,
  ]);
  const short = shifts.filter(({ operation, fitters }) => operation.people > fitters.length);
  return [
    table(
      [
        { head: 'From', right: true },
        { head: 'To', right: true },
        { head: 'Fitter' },
        { head: 'Operation' },
        { head: 'What is done' },
      ],
      rows,
    ),
    `\n${sharedWords(shared)}`,
    ...short.map(
      ({ operation }) =>
        `\n${plain(operation.name)} takes ${operation.people} people: ask for another pair of hands.`,
    ),
  ].join('');
};

/** @param shift  minutes of each */
export const inShiftsText = ({ shifts, atLeast, proved }: InShifts, shift: number): string => {
  const rows = shifts.flatMap(({ operations, minutes }, at) =>
    operations.map(({ name, title, minutes: own = 0 }, index) => [
      index === 0 ? String(at + 1) : '',
      index === 0 ? `${durationText(minutes)} of ${durationText(shift)}` : '',
      name,
      title,
      durationText(own),
    ]),
  );
  const least = proved
    ? 'it cannot be done in fewer'
    : `it cannot be done in fewer than ${atLeast}; whether these are the fewest is not proved`;
  return [
    table(
      [
        { head: 'Shift', right: true },
        { head: 'Filled' },
        { head: 'Operation' },
        { head: 'What is done' },
        { head: 'Takes', right: true },
      ],
      rows,
    ),
    `\n${counted(shifts.length, 'shift')}, one operation after another: ${least}.`,
  ].join('');
};

export const nowText = ({ open, waiting }: OpenNow): string =>
  [
    open.length === 0 ? 'Nothing can be done now.\n' : `Can be done now\n\n${operationTable(open)}`,
    section(
      'Waits for parts',
      waiting.map(({ operation, away }) => `${operation.name}: ${operation.title} (${away.join(', ')} away)`),
    ),
  ].join('');
