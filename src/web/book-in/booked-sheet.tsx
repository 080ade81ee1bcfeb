/** @module What was booked in, as it was written down. */
import { phaseOf } from '../../job/phase.ts';
import { typedText } from '../../quantity/typed.ts';
import { useJob } from '../journal/use-desk.tsx';
import { ScopePart } from '../scope/scope-part.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { FormerOfJob } from './former-of-job.tsx';
import { SlipsOfJob } from './slips-of-job.tsx';

export const BookedSheet = () => {
  const job = useJob();
  const { booked, sheet } = job;
  const now = phaseOf(job);
  const lines: readonly (readonly [string, string])[] = [
    ['Job', booked.number],
    ['Engine', `${sheet.engine.title}, version ${sheet.engine.version}`],
    ['Limits from', sheet.engine.source],
    ['Checked by', sheet.engine.checked?.by ?? 'nobody yet'],
    ['Owner', booked.owner],
    ['Plate', booked.plate === '' ? 'none found' : booked.plate],
    ['Hours run', typedText(booked.hoursRun)],
    ['Complaint', booked.complaint],
    ['Hours wanted', booked.hoursWanted === undefined ? 'not said' : typedText(booked.hoursWanted)],
    ['Days at most', booked.daysWanted === undefined ? 'not said' : String(booked.daysWanted)],
    [
      'Rule',
      `within when conformance is at least ${Math.round(sheet.conformance * 100)} % probable (ISO 14253-1)`,
    ],
    ['Booked in by', `${booked.by}, ${booked.at.slice(0, 10)}`],
  ];
  return (
    <>
      <ThreeAnswers
        where="booked in"
        now={now.next === '' ? 'nothing is left to do' : `${now.name}: ${now.next}`}
        right={`written down by ${booked.by}, ${booked.at.slice(0, 10)}`}
      />
      <table>
        <caption>As booked in</caption>
        <tbody>
          {lines.map(([name, says]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{says}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ScopePart />
      <FormerOfJob />
      <SlipsOfJob />
    </>
  );
};
