/** @module One stand-alone sum: what is given on the left, what comes of it on the right, as it is typed. */
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import { Link, useSearchParams } from 'wouter';
import { pictures } from '../../drawing/reckoned/list.ts';
import { reckonTyped } from '../../reckon/given.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Reckoning } from '../../reckon/reckoning.ts';
import { Sheet } from '../shell/sheet.tsx';
import { reckonerAddress } from './reckoner-address.ts';
import { SumAnswer } from './sum-answer.tsx';
import { SumInputs } from './sum-inputs.tsx';

const examplesOf = ({ inputs }: Reckoning): Readonly<Record<string, string>> =>
  Object.fromEntries(inputs.map(({ key, example }) => [key, example]));

const Sum = ({ reckoning }: { readonly reckoning: Reckoning }) => {
  const [search, setSearch] = useSearchParams();
  const typed = search.toString();
  const texts = useMemo(
    () => Object.fromEntries([...new URLSearchParams(typed)].filter(([, text]) => text.trim() !== '')),
    [typed],
  );
  const answered = useMemo(() => reckonTyped(reckoning, texts), [reckoning, texts]);
  const setTexts = (next: Readonly<Record<string, string>>) =>
    setSearch(new URLSearchParams(Object.entries(next).filter(([, text]) => text !== '')), { replace: true });
  const untouched = Object.keys(texts).length === 0;
  return (
    <>
      <h1>{reckoning.title}</h1>
      <div className="sum">
        <div className="part">
          <SumInputs
            reckoning={reckoning}
            texts={Object.fromEntries(search)}
            refusal={answered.kind === 'refused' && !untouched ? answered.refusal : undefined}
            onText={(key, text) => setTexts({ ...Object.fromEntries(search), [key]: text })}
          />
          <div className="row">
            <Button onPress={() => setTexts(examplesOf(reckoning))}>Fill in an example</Button>
            <Button onPress={() => setTexts({})}>Empty all fields</Button>
            <Button onPress={() => print()}>Print</Button>
          </div>
        </div>
        <section className="part" aria-label="Answer" aria-live="polite">
          {answered.kind === 'answer' ? (
            <SumAnswer
              given={answered.value.values}
              reckoned={answered.value.reckoned}
              picture={pictures[reckoning.name]}
            />
          ) : untouched ? (
            <p>Type what is known, each figure with its unit; after ± how well it is known.</p>
          ) : (
            <p className="refused">
              <strong>{answered.refusal.what}</strong> ({answered.refusal.where}). {answered.refusal.remedy}.
            </p>
          )}
        </section>
      </div>
      <section className="part" aria-label="Papers of the sum">
        <h2>Formula and source</h2>
        <p>{reckoning.formula}</p>
        <p className="faint">{reckoning.source}</p>
        <p className="faint">
          In the terminal: <code>endfloat reckon {reckoning.name} --help</code>
        </p>
      </section>
    </>
  );
};

const SumScreen = ({ name }: { readonly name: string }) => {
  const reckoning = reckonings.find((known) => known.name === name);
  return (
    <Sheet heading={reckoning?.name ?? 'No such sum'}>
      <p>
        <Link className="button" href={reckonerAddress}>
          All sums
        </Link>
      </p>
      {reckoning === undefined ? <p>There is no sum of this name.</p> : <Sum reckoning={reckoning} />}
    </Sheet>
  );
};

export default SumScreen;
