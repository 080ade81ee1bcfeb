/** @module Days of the calendar as they are written, `2026-03-02`, counted without a clock. */

/** Days from 1970-01-01 to a day of the Gregorian calendar; March begins the year, so that the leap day ends it. */
const countOf = (year: number, month: number, day: number): number => {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
};

const counted = (day: string): number => {
  const [year = 1970, month = 1, date = 1] = day.slice(0, 10).split('-').map(Number);
  return countOf(year, month, date);
};

const written = (count: number): string => {
  const shifted = count + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  const month = shiftedMonth + (shiftedMonth < 10 ? 3 : -9);
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return [String(year).padStart(4, '0'), ...[month, day].map((part) => String(part).padStart(2, '0'))].join(
    '-',
  );
};

/**
 * The day that comes a number of days after another, in the Gregorian calendar (ISO 8601).
 *
 * @param day   a day, or a moment that begins with one, as `2026-03-02` or `2026-03-02T08:00:00Z`
 * @param days  a whole number, 0 to 10,000
 * @example dayAfter('2024-02-28', 2) // '2024-03-01'
 */
export const dayAfter = (day: string, days: number): string => written(counted(day) + days);

/**
 * Days from one day to another, below zero where the second comes first.
 *
 * @param from  a day, or a moment that begins with one
 * @example daysBetween('2024-02-28', '2024-03-01T08:00:00Z') // 2
 */
export const daysBetween = (from: string, to: string): number => counted(to) - counted(from);
