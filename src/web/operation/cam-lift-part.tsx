/** @module Lifts of the cams compared, at the operation that asks for them. */
import { useMemo } from 'react';
import type { Operation } from '../../engine/engine-type.ts';
import { camSection } from '../../record/sections/valves.ts';
import { useJob } from '../journal/use-desk.tsx';

export const CamLiftPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const section = useMemo(() => camSection(job)[0], [job]);
  const { pumpTiming, valveSetting } = job.sheet.engine;
  const asked = [pumpTiming?.lift, valveSetting?.lift].some((of) => of && operation.needs.includes(of));
  if (!asked || section?.table === undefined) return null;
  return (
    <section className="part" aria-label={section.title}>
      <h3>{section.title}</h3>
      {section.says.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <div className="scroll">
        <table>
          <thead>
            <tr>
              {section.table.heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {section.table.rows.map(({ of, cells: [first, ...rest] }) => (
              <tr key={of}>
                <th scope="row">{first}</th>
                {rest.map((cell, at) => (
                  <td key={section.table?.heads[at + 1]} className="figure">
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};
