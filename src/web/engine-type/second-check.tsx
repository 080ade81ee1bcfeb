/** @module The second person types in the critical figures from the manual, without seeing those in the file. */
import { type FormEvent, useCallback, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { type CriticalFigure, criticalFigures } from '../../engine/edit/critical-figures.ts';
import { fileData } from '../../engine/edit/edit-engine.ts';
import type { FigureApart } from '../../engine/edit/second-check.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { samePerson } from '../../engine/same-person.ts';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { whoNow } from '../shell/who.ts';
import { CheckedFigure } from './checked-figure.tsx';
import { useChecking } from './shelf.ts';
import type { TypeSheetProps } from './type-sheet-props.ts';
import { useTypedFigures } from './typed-figures.ts';

const Apart = ({
  apart,
  by,
  author,
}: {
  readonly apart: readonly FigureApart[];
  readonly by: string;
  readonly author: string;
}) => (
  <section className="part" aria-label="Read differently">
    <h2>
      {apart.length} {apart.length === 1 ? 'figure was' : 'figures were'} read differently
    </h2>
    <p>
      Nothing is signed. Look at the page together: either mend the figure under Figures, or type it in again
      here. Both see this, and it stands in the file until both agree.
    </p>
    <table>
      <thead>
        <tr>
          <th scope="col">figure</th>
          <th scope="col">page</th>
          <th scope="col">{author} typed</th>
          <th scope="col">{by} typed</th>
        </tr>
      </thead>
      <tbody>
        {apart.map((one) => (
          <tr key={one.at}>
            <th scope="row">{one.title}</th>
            <td>{one.source ?? ''}</td>
            <td className="figure">{one.figure}</td>
            <td className="figure">{one.reads}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);

/** What stands in the file as read differently, with both readings. */
const apartIn = (
  text: string,
  figures: readonly CriticalFigure[],
): readonly (FigureApart & { readonly by: string })[] =>
  (readEngineType(text).engine?.differs ?? []).flatMap(({ at, reads, by }) => {
    const figure = figures.find((one) => one.at === at);
    return figure ? [{ ...figure, reads, by }] : [];
  });

const Standing = ({
  checked,
}: {
  readonly checked: { readonly by: string; readonly on: string } | undefined;
}) =>
  checked ? (
    <p>
      ✓ Checked by {checked.by}, {checked.on}.
    </p>
  ) : (
    <p>Not checked yet.</p>
  );

export const SecondCheck = ({ newest }: TypeSheetProps) => {
  const by = whoNow().actor;
  const checking = useChecking(newest.id);
  const [typed, change] = useTypedFigures(newest.id, by);
  const { engine } = useMemo(() => readEngineType(newest.text), [newest.text]);
  const figures = useMemo(() => {
    const file = fileData(newest.text);
    return file.kind === 'answer' ? criticalFigures(file.value.data) : [];
  }, [newest.text]);
  const apart = useMemo(() => apartIn(newest.text, figures), [newest.text, figures]);
  const left = figures.filter(({ at }) => (typed[at] ?? '').trim() === '').length;
  const author = engine?.entered?.by;
  const inputs = useRef<(HTMLInputElement | null)[]>([]);
  const button = useRef<HTMLButtonElement>(null);
  // Stable, so that a figure typed draws one row anew and not all of them.
  const onTyped = useCallback(
    (at: string, text: string) => change((before) => ({ ...before, [at]: text })),
    [change],
  );
  const onNext = useCallback((index: number) => (inputs.current[index + 1] ?? button.current)?.focus(), []);
  const register = useCallback((index: number, input: HTMLInputElement | null) => {
    inputs.current[index] = input;
  }, []);

  const check = async (event: FormEvent) => {
    event.preventDefault();
    const missing = figures.findIndex(({ at }) => (typed[at] ?? '') === '');
    if (missing !== -1) return inputs.current[missing]?.focus();
    const done = await checking.mutateAsync({
      after: newest.version,
      by,
      figures: figures.map(({ at }) => ({ at, reads: typed[at] ?? '' })),
    });
    if (done.kind === 'refused') return;
    const again = new Set(done.apart.map(({ at }) => at));
    change((before) =>
      done.apart.length === 0
        ? {}
        : Object.fromEntries(Object.entries(before).filter(([at]) => !again.has(at))),
    );
    announce(
      done.apart.length === 0
        ? `All figures agree: checked, version ${done.engineType.version}.`
        : `${done.apart.length} figures were read differently.`,
    );
  };

  const shown = (
    <>
      <Standing checked={engine?.checked} />
      {apart.length === 0 ? null : (
        <Apart apart={apart} by={apart[0]?.by ?? ''} author={author ?? 'the file'} />
      )}
    </>
  );
  if (author === undefined)
    return (
      <>
        {shown}
        <p className="note">
          The file does not say who typed the figures in. Let whoever did save it once under their name, under
          Figures or Text; then somebody else can check them here.
        </p>
      </>
    );
  if (samePerson(author, by))
    return (
      <>
        {shown}
        <p className="note">
          You typed these figures in. Let somebody else sign on at this bench and type them in from the
          manual.
        </p>
      </>
    );
  return (
    <form className="column" onSubmit={check}>
      {shown}
      <p>
        Type each figure in from the manual, with its unit, as it is printed. What {author} typed is not
        shown. What you type is kept on this bench until you are through.
      </p>
      <div className="checks">
        {figures.map((figure, index) => (
          <CheckedFigure
            key={figure.at}
            figure={figure}
            typed={typed[figure.at] ?? ''}
            index={index}
            onTyped={onTyped}
            onNext={onNext}
            register={register}
          />
        ))}
      </div>
      <Refused refusal={checking.data?.kind === 'refused' ? checking.data.refusal : undefined} />
      <div className="row">
        <Button ref={button} type="submit" className="first" isDisabled={checking.isPending}>
          Hold them against the file, as {by}
        </Button>
        <p role="status">
          {left === 0
            ? `All ${figures.length} are typed in.`
            : `${left} of ${figures.length} are still to be typed in.`}
        </p>
      </div>
    </form>
  );
};
