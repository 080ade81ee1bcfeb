/** @module Findings: what is seen without a number, and whether the part may go back. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { FindingKind } from '../../job/event.ts';
import { findingWords } from '../../job/finding-words.ts';
import { pictureOfWords } from '../../job/picture-of.ts';
import { scopeOf } from '../../job/scope.ts';
import type { PictureWithBytes } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { PicturesOf } from '../picture/pictures-of.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { FindingPictures } from './finding-pictures.tsx';
import { FindingTests } from './finding-tests.tsx';
import { noteWithPictures } from './note-finding.ts';
import { type Finding, findingKinds, noteFinding } from './strip-actions.ts';

const blank: Finding = { place: '', component: '', finding: 'sound', mayGoBack: true, says: '' };

export const Findings = () => {
  const job = useJob();
  const keeper = useKeeper();
  const [form, setForm] = useState(blank);
  const [drawn, setDrawn] = useState<readonly PictureWithBytes[]>([]);
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<Refusal>();
  const { engine } = job.sheet;
  const { open } = scopeOf(job);
  const component = engine.components.get(form.component);
  const places = [...engine.places.values()].filter(({ kind }) => kind === component?.at);
  const choose = (name: string) => {
    const at = engine.components.get(name)?.at;
    const here = [...engine.places.values()].filter(({ kind }) => kind === at);
    const first = here.find(({ id }) => open.has(id)) ?? here[0];
    setForm({ ...form, component: name, place: first?.id ?? '' });
  };
  const note = async () => {
    setBusy(true);
    const refused = await noteWithPictures(keeper, form, drawn);
    setBusy(false);
    setRefusal(refused);
    if (refused) return;
    setForm(blank);
    setDrawn([]);
  };
  return (
    <section className="part" aria-label="Findings">
      <h2>Findings</h2>
      {job.findings.length === 0 ? (
        <p>Nothing noted yet.</p>
      ) : (
        <ul>
          {job.findings.map((one) => (
            <li key={one.id}>
              {engine.places.get(one.place)?.title}, {engine.components.get(one.component)?.title}:{' '}
              {findingWords(one)}, <strong>{one.mayGoBack ? 'may go back' : 'may not go back'}</strong>
              {one.says === '' ? '' : `. ${one.says}`} ({one.by})
              <PicturesOf
                of={{ finding: one.id }}
                title={pictureOfWords(engine, job.findings, { finding: one.id })}
              />
            </li>
          ))}
        </ul>
      )}
      {noteFinding.enabled(job) ? (
        <>
          <div className="two-up">
            <Choice
              label="Part"
              value={form.component}
              onChange={choose}
              of={[
                { value: '', words: 'choose one …' },
                ...[...engine.components.values()].map(({ name, title }) => ({ value: name, words: title })),
              ]}
            />
            <Choice
              label="Place"
              value={form.place}
              onChange={(place) => setForm({ ...form, place })}
              of={
                places.length === 0
                  ? [{ value: '', words: 'choose the part first' }]
                  : places.map(({ id, title }) => ({
                      value: id,
                      words: open.has(id) ? title : `${title}, not opened in this job`,
                    }))
              }
            />
            <Choice
              label="Finding"
              value={form.finding}
              onChange={(finding) =>
                setForm({
                  ...form,
                  finding: finding as FindingKind,
                  // A crack is the end of a part, until somebody who knows better says otherwise.
                  mayGoBack: finding === 'cracked' ? false : form.mayGoBack,
                })
              }
              of={findingKinds.map((kind) => ({ value: kind, words: kind }))}
            />
            <Choice
              label="May it go back"
              value={form.mayGoBack ? 'yes' : 'no'}
              onChange={(yes) => setForm({ ...form, mayGoBack: yes === 'yes' })}
              of={[
                { value: 'yes', words: 'may go back' },
                { value: 'no', words: 'may not go back' },
              ]}
            />
          </div>
          <FindingTests form={form} onChange={setForm} />
          <Field
            label="What you saw, where, how deep"
            value={form.says}
            onChange={(says) => setForm({ ...form, says })}
          />
          <FindingPictures drawn={drawn} onChange={setDrawn} />
          <Refused refusal={refusal} />
          <div>
            <Button isDisabled={busy} onPress={() => void note()}>
              {noteFinding.label}
            </Button>
          </div>
        </>
      ) : null}
    </section>
  );
};
