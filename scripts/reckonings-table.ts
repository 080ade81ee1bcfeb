/** @module The published table of reckonings: each sum, what it was held against, how far off it came. */
import { reckonings } from '../src/reckon/list.ts';
import type { OutsideCheck } from '../test/outside-check.ts';

const withUnit = (value: number, unit: string): string => (unit === '1' ? `${value}` : `${value} ${unit}`);

/**
 * Two digits, rounded up: no deviation is printed smaller than it was. What is far below what is allowed may be the
 * noise of binary sums, which differs from machine to machine, and is printed as such.
 */
const deviationText = (value: number, allowed: number, unit: string): string => {
  if (value < Math.max(allowed * 1e-3, 1e-9)) return 'none to speak of';
  const power = 10 ** (1 - Math.floor(Math.log10(value)));
  return withUnit(Number((Math.ceil(value * power * (1 - 1e-9)) / power).toPrecision(2)), unit);
};

/** Said of a sum that nothing outside the project can be held against. */
const noSource = 'common practice, no source';

/** Sums that no figure from outside was held against, though their papers do not say that there is none. */
export const uncheckedSums = (checks: readonly OutsideCheck[]): readonly string[] =>
  reckonings
    .filter(
      ({ name, source }) => !source.includes(noSource) && !checks.some(({ reckoning }) => reckoning === name),
    )
    .map(({ name }) => name);

const cell = (text: string): string => text.replaceAll('|', '\\|');

const rowsOf = (name: string, checks: readonly OutsideCheck[]): readonly string[] => {
  const own = Map.groupBy(
    checks.filter(({ reckoning }) => reckoning === name),
    ({ source, unit }) => `${source}\n${unit}`,
  );
  if (own.size === 0) return [`| \`${name}\` | ${noSource} | | |`];
  return [...own.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, group], at) => {
      const { source = '', unit = '' } = group[0] ?? {};
      const greatest = Math.max(...group.map(({ deviation }) => deviation));
      const allowed = Math.max(...group.map((each) => each.allowed));
      const off = deviationText(greatest, allowed, unit);
      return `| ${at === 0 ? `\`${name}\`` : ''} | ${cell(source)} (${group.length}) | ${off} | ${withUnit(allowed, unit)} |`;
    });
};

/**
 * The table as it stands in docs/reckonings.md.
 *
 * @param checks  every check that the tests noted
 */
export const reckoningsTable = (checks: readonly OutsideCheck[]): string =>
  [
    '# The reckonings and what they were held against',
    '',
    'Written by `npm run reckonings` from the tests; `npm test` fails where it is stale. In brackets: how many figures',
    'were compared. The deviation is the greatest seen; what is allowed is what the rounding of the printed figure, or',
    'the reading of its chart, leaves open. The formula and its source are said by `endfloat reckon NAME --help`.',
    '',
    '| sum | held against | greatest deviation | allowed |',
    '| --- | --- | --- | --- |',
    ...[...reckonings].sort((a, b) => (a.name < b.name ? -1 : 1)).flatMap(({ name }) => rowsOf(name, checks)),
    '',
  ].join('\n');
