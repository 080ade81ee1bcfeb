/** @module Alarms, loud: what is wrong, what to do at once, and the two ways to answer them. */
import type { Alarm } from '../../job/run/alarm.ts';

export const AlarmWords = ({ alarms }: { readonly alarms: readonly Alarm[] }) => (
  <div role="alert">
    {alarms.map(({ says, remedy, stop }) => (
      <div key={says} className="alarm" data-stop={stop}>
        <strong>
          <span aria-hidden="true">✕ </span>
          {stop ? 'Stop the engine: ' : 'Alarm: '}
          {says}.
        </strong>
        <span> {remedy.charAt(0).toUpperCase() + remedy.slice(1)}.</span>
      </div>
    ))}
  </div>
);
