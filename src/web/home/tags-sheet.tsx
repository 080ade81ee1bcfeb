/** @module The sheet of tags: scan one and see where its part belongs; what strayed and who decides; all of them. */
import { useState } from 'react';
import { useHistoryState } from 'wouter/use-browser-location';
import { homeWords, stateWords } from '../../job/home/home-words.ts';
import { partHomesOf } from '../../job/home/part-home.ts';
import { readTag } from '../../job/home/tag-text.ts';
import { useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { DecideForm } from './decide-form.tsx';
import { Scan } from './scan.tsx';
import { StrayedForm } from './strayed-form.tsx';
import { TagShown } from './tag-shown.tsx';
import { isScanned } from './tags-address.ts';

export const TagsSheet = () => {
  const job = useJob();
  const sent = useHistoryState<unknown>();
  const [scanned, setScanned] = useState(isScanned(sent) ? sent.scanned : undefined);
  const homes = partHomesOf(job);
  const off = homes.filter(({ comesOff, state }) => comesOff || state.kind === 'in question');
  const stay = homes.length - off.length;
  const read = scanned === undefined ? undefined : readTag(job, scanned);
  const shown = read?.kind === 'answer' ? homes[read.value.number - 1] : undefined;
  const strayed = homes.filter(({ state }) => state.kind === 'in question');
  const taken = (text: string) => {
    setScanned(text);
    const now = readTag(job, text);
    const home = now.kind === 'answer' ? homes[now.value.number - 1] : undefined;
    if (home) announce(`${home.tag.title}: ${homeWords(job, home)}, ${stateWords(home)}`);
  };
  return (
    <>
      <ThreeAnswers
        where={shown ? homeWords(job, shown) : 'among the parts that came off'}
        now={shown ? 'put it back where it is kept, or take it home' : 'scan the tag of a part'}
        right={
          strayed.length > 0
            ? `✕ ${strayed.length} in question`
            : `${off.filter(({ state }) => state.kind === 'home' || state.kind === 'fitted').length} of ${off.length} home`
        }
      />
      <Scan button="What is it" onText={taken} />
      <Refused refusal={read?.kind === 'refused' ? read.refusal : undefined} />
      {shown ? <TagShown home={shown} /> : null}
      {strayed.length > 0 ? (
        <section className="part" aria-label="In question">
          <h2>In question</h2>
          <ul className="steps">
            {strayed.map((home) => (
              <DecideForm key={home.tag.id} home={home} />
            ))}
          </ul>
        </section>
      ) : null}
      <StrayedForm />
      <section className="scroll" aria-label="All tags">
        <table>
          <thead>
            <tr>
              <th scope="col">Tag</th>
              <th scope="col">Part</th>
              <th scope="col">Belongs to</th>
              <th scope="col">Stands</th>
            </tr>
          </thead>
          <tbody>
            {off.map((home) => (
              <tr key={home.tag.id}>
                <td className="figure">{home.tag.number}</td>
                <th scope="row">{home.tag.title}</th>
                <td>{homeWords(job, home)}</td>
                <td>{stateWords(home)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {stay === 0 ? null : (
        <p>
          {stay} of the engine’s tagged parts are not named here: this job does not open their places, and
          they stay on the engine.
        </p>
      )}
    </>
  );
};
