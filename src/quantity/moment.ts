/** @module Moments as they are written, `2026-03-02T08:00:00Z`, and how long it is between two of them. */
import { daysBetween } from './day.ts';

/** Minutes since midnight. */
const minuteOf = (moment: string): number => {
  const [, hour = '0', minute = '0', second = '0'] = /T(\d\d):(\d\d):(\d\d(?:\.\d+)?)/.exec(moment) ?? [];
  return Number(hour) * 60 + Number(minute) + Number(second) / 60;
};

/**
 * Minutes from one moment to another, both in UTC (RFC 3339); below zero where the second comes first.
 *
 * @example minutesBetween('2024-02-28T23:50:00Z', '2024-02-29T00:20:30Z') // 30.5
 */
export const minutesBetween = (from: string, to: string): number =>
  daysBetween(from, to) * 1440 + minuteOf(to) - minuteOf(from);

/**
 * Minutes in words, to the whole minute: `45 min`, `2 h 05 min`.
 *
 * @param minutes  0 and up
 * @example durationText(125.4) // '2 h 05 min'
 */
export const durationText = (minutes: number): string => {
  const whole = Math.round(minutes);
  return whole < 60
    ? `${whole} min`
    : `${Math.floor(whole / 60)} h ${String(whole % 60).padStart(2, '0')} min`;
};
