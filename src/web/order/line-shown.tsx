/** @module One line of an order: how it stands, its certificate, and what may be done where it is not as ordered. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { CrackTest } from '../../job/event.ts';
import { testsLacking } from '../../job/order/crack-test.ts';
import type { LineAt, LineStanding } from '../../job/order/standing.ts';
import { standingWords } from '../../job/order/standing-words.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { acceptLine, noteCertificate, sendBack } from './order-actions.ts';

const sign: Readonly<Record<LineStanding['kind'], string>> = {
  awaited: '…',
  'to check': '?',
  failed: '✗',
  'taken in': '✓',
  'given up': '–',
};

const CertificateForm = ({
  at: { order, line },
  by,
}: {
  readonly at: LineAt;
  readonly by: CrackTest['by'];
}) => {
  const act = useAct();
  const [certificate, setCertificate] = useState('');
  const [showed, setShowed] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const note = (event: FormEvent) => {
    event.preventDefault();
    if (showed === '')
      return setRefusal({
        what: 'what the crack test showed is not said',
        where: line.says,
        remedy: 'look at the certificate and choose',
      });
    const refused = act(noteCertificate, {
      order: order.order,
      line: line.line,
      certificate,
      crackTest: { by, showed: showed === 'a crack' ? 'a crack' : 'no crack' },
    });
    setRefusal(refused);
    if (!refused) announce(`Certificate ${certificate} noted.`);
  };
  return (
    <form className="row" onSubmit={note} aria-label={`Certificate of ${line.says}`}>
      <Field label="Certificate number" value={certificate} onChange={setCertificate} required />
      <Choice
        label={`Crack test by ${by} showed`}
        value={showed}
        onChange={setShowed}
        of={[
          { value: '', words: 'choose …' },
          { value: 'no crack', words: 'no crack' },
          { value: 'a crack', words: 'a crack' },
        ]}
      />
      <Button type="submit">{noteCertificate.label}</Button>
      <Refused refusal={refusal} />
    </form>
  );
};

/** Where what failed belongs; all places of the line where nothing says which. */
const failedPlaces = ({ line, judged }: LineAt): readonly string[] => {
  const outside = judged.filter(({ verdict }) => verdict === 'outside').map(({ place }) => place);
  const own = line.places.filter((place) => outside.includes(place));
  return own.length > 0 ? own : line.places;
};

const NotAsOrdered = ({ at }: { readonly at: LineAt }) => {
  const act = useAct();
  const { order, line, here } = at;
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const named = { order: order.order, line: line.line };
  const back = () => {
    const places = failedPlaces(at);
    const count = Math.min(here, line.count === line.places.length ? places.length : here);
    const refused = act(sendBack, { ...named, count, places, why });
    setRefusal(refused);
    if (!refused) announce(`${line.says} sent back.`);
  };
  const accept = () => {
    const refused = act(acceptLine, { ...named, why });
    setRefusal(refused);
    if (!refused) announce(`${line.says} taken in as it is.`);
  };
  return (
    <div className="row">
      <Field className="grow" label={`Why, for ${line.says}`} value={why} onChange={setWhy} />
      <Button onPress={back}>{sendBack.label}</Button>
      <Button onPress={accept}>{acceptLine.label}</Button>
      <Refused refusal={refusal} />
    </div>
  );
};

export const LineShown = ({ at }: { readonly at: LineAt }) => {
  const job = useJob();
  const { line, here, standing, order } = at;
  const by = here > 0 && !job.handedOver ? testsLacking(job, order, line) : undefined;
  const checked = here > 0 && !job.handedOver;
  return (
    <li data-line={line.line} data-standing={standing.kind}>
      <div className="grow column">
        <p style={{ margin: 0 }}>
          <span aria-hidden="true">{sign[standing.kind]}</span> <strong>{line.says}</strong>, {here} of{' '}
          {line.count} here: {standingWords(standing)}
        </p>
        {by === undefined ? null : <CertificateForm at={at} by={by} />}
        {checked && standing.kind === 'failed' ? <NotAsOrdered at={at} /> : null}
        {checked && standing.kind === 'to check' ? (
          <Aside words={`Send ${line.says} back, or take it as it is`}>
            <NotAsOrdered at={at} />
          </Aside>
        ) : null}
      </div>
    </li>
  );
};
