/** @module Readings from a file, a table or a workbook: what is wrong and what would be taken, shown before it is. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { v7 } from 'uuid';
import type { OpenJob } from '../../job/job.ts';
import { requestsToTake } from '../../job/readings-to-take.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { RowTroubleTable } from '../engine-type/trouble-table.tsx';
import { useInstruments } from '../jobs/workshop-lists.ts';
import { useKeeper } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { FileField } from '../shell/file-field.tsx';
import { Refused } from '../shell/refused.tsx';
import { whoNow } from '../shell/who.ts';
import { type ReadingsChosen, readingsIn, whyNot } from './readings-in-file.ts';

/** As many as tell whether it is the right file; the rest is counted. */
const mostShown = 12;

const Preview = ({ chosen, job }: { readonly chosen: ReadingsChosen; readonly job: OpenJob }) => {
  const { readings } = chosen;
  const { engine } = job.sheet;
  return readings.length === 0 ? (
    <p>{chosen.name} holds no reading that can be taken.</p>
  ) : (
    <section className="scroll" aria-label="Readings in the file">
      <table>
        <caption>
          {readings.length} {readings.length === 1 ? 'reading' : 'readings'} in {chosen.name}
          {readings.length > mostShown ? `, the first ${mostShown}` : ''}
        </caption>
        <thead>
          <tr>
            <th scope="col">place</th>
            <th scope="col">what</th>
            <th scope="col" className="number">
              reading
            </th>
            <th scope="col">instrument</th>
          </tr>
        </thead>
        <tbody>
          {readings.slice(0, mostShown).map(({ id, cell, typed, instrument }) => (
            <tr key={id}>
              <td>{engine.places.get(cell.place)?.title}</td>
              <td>
                {[engine.characteristics.get(cell.characteristic)?.title, cell.plane, cell.axis]
                  .filter((part) => part !== undefined && part !== '')
                  .join(', ')}
              </td>
              <td className="number figure">{typedText(typed)}</td>
              <td>{instrument}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

export const FromFile = ({ job }: { readonly job: OpenJob }) => {
  const keeper = useKeeper();
  const register = useInstruments().data ?? [];
  const [chosen, setChosen] = useState<ReadingsChosen>();
  const [refusal, setRefusal] = useState<Refusal>();
  const errors = chosen?.troubles.filter(({ weight }) => weight === 'error').length ?? 0;

  const choose = async (file: File) => {
    const read = await readingsIn(file, job, register);
    setRefusal(read.kind === 'refused' ? read.refusal : undefined);
    setChosen(read.kind === 'answer' ? read.value : undefined);
  };
  const take = () => {
    if (!chosen) return;
    const requests = requestsToTake(chosen, job, register);
    const sign = () => ({ id: v7(), at: new Date().toISOString(), ...whoNow() });
    const refused = whyNot(job, requests, sign);
    setRefusal(refused);
    if (refused) return;
    for (const request of requests) keeper.ask(request);
    announce(`${chosen.readings.length} readings taken from ${chosen.name}.`);
    setChosen(undefined);
  };
  return (
    <div className="column">
      <FileField
        label="File of readings (CSV, XLSX or JSON)"
        accept=".csv,.tsv,.txt,.json,.xlsx"
        hint="With the columns place, characteristic and reading, or box and reading of a printed sheet. Nothing is taken before you say so."
        onFile={choose}
      />
      <Refused refusal={refusal} />
      {chosen === undefined ? null : (
        <>
          <RowTroubleTable troubles={chosen.troubles} />
          <Preview chosen={chosen} job={job} />
          <div className="row">
            <Button className="first" isDisabled={errors > 0 || chosen.readings.length === 0} onPress={take}>
              Take these {chosen.readings.length} readings
            </Button>
            <p role="status">
              {errors === 0
                ? ''
                : `${errors} ${errors === 1 ? 'row has an error' : 'rows have errors'}: mend the file and choose it again. All of it is taken, or none.`}
            </p>
          </div>
        </>
      )}
    </div>
  );
};
