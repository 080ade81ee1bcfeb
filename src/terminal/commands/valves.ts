/** @module `endfloat valves`: which valves to set at which position of the crank, what was read, what is next; cam lifts compared. */
import { valvesOfJob } from '../../job/valve-setting.ts';
import { answer, refuse } from '../../quantity/refusal.ts';
import { lengthText } from '../../record/figure-text.ts';
import { camLiftsOfJob, camSection, positionText, valveText } from '../../record/sections/valves.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { sectionText } from '../section-text.ts';
import { inJob, storeOptions } from '../workshop.ts';

export const valves: TerminalCommand = {
  name: 'valves',
  summary: 'show which valves are set at which position of the crank, and how far they are set',
  usage: ['valves JOB'],
  about:
    'Clearances are read with endfloat do JOB take-reading.\nExit code 1 while a valve is not within its limits.',
  options: storeOptions,
  words: [1, 1],
  run: (given) =>
    inJob<Outcome>(given, async ({ job }) => {
      const set = valvesOfJob(job);
      if (set === undefined)
        return refuse(
          `the engine type ${job.sheet.engine.title} says nothing of setting valves`,
          'valve-setting',
          'give valve-setting in the engine type; endfloat reckon valve-clearance-order answers without it',
        );
      if (set.kind === 'refused') return set;
      const { setting, positions, next, within, of } = set.value;
      const lines = positions.flatMap((position, at) => [
        `${at === 0 ? 'Turn' : `Turn on ${position.turn}°`} ${setting.turn}: ${positionText(position)}`,
        ...position.valves.map(
          (valve) =>
            `  ${valveText(valve)}: ${valve.clearance === undefined ? 'not read yet' : `${lengthText(valve.clearance)}, ${valve.verdict}`}${valve.adjust === undefined ? '' : `; ${valve.adjust}`}`,
        ),
      ]);
      return answer({
        text: [
          `Engine ${setting.engineIs}. ${within} of ${of} valves within their limits.`,
          ...lines,
          ...(next === undefined ? [] : [`Next: ${valveText(next)}, ${next.place} ${next.characteristic}`]),
          '',
          ...camSection(job).map((section) => `${section.title}\n${sectionText(section)}`),
        ]
          .map(plain)
          .join('\n'),
        json: { ...set.value, cams: camLiftsOfJob(job) },
        ...(next === undefined ? {} : { no: true as const }),
      });
    }),
};
