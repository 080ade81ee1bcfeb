/** @module The loose parts of a component: measured one after another, listed, set aside. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { kindOf } from '../../engine/instrument-kind.ts';
import type { ComponentFit } from '../../job/fitting.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { expanded } from '../../quantity/uncertain.ts';
import { knownText } from '../../record/figure-text.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { readEntry } from '../measure/measure-actions.ts';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { measurePart, setPartAside } from './build-actions.ts';

const same = (name: string) => ({ value: name, words: name });

const MeasurePart = ({ fit }: { readonly fit: ComponentFit }) => {
  const job = useJob();
  const act = useAct();
  const { component, fitting } = fit;
  const halves = fitting.takes.filter((half) => half !== '');
  const lengths = [...job.sheet.instruments.values()].filter(
    ({ kind }) => kindOf(kind).measures === 'length',
  );
  const suited = lengths.toSorted(
    (a, b) => Number(b.kind === fitting.instrument) - Number(a.kind === fitting.instrument),
  );
  const [part, setPart] = useState('');
  const [half, setHalf] = useState(halves[0] ?? '');
  const wanted = fit.places.find(({ assigned }) => !assigned) ?? fit.places[0];
  const [size, setSize] = useState(wanted?.size ?? 'standard');
  const [named, setNamed] = useState<string>();
  const [reading, setReading] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const instrument = suited.find(({ name }) => name === named) ?? suited[0];
  const note = (event: FormEvent) => {
    event.preventDefault();
    const typed = readEntry(reading, instrument?.resolution.unit ?? 'mm', 'length');
    if (typed.kind === 'refused') return setRefusal(typed.refusal);
    const refused = act(measurePart, {
      component: component.name,
      part: part.trim(),
      size,
      ...(half === '' ? {} : { half }),
      readings: [{ typed: typed.value, instrument: instrument?.name ?? '' }],
    });
    setRefusal(refused);
    if (refused) return;
    announce(`Part ${part.trim()} measured.`);
    setPart('');
    setReading('');
  };
  return (
    <form onSubmit={note} className="column" aria-label={`Measure a loose part: ${component.title}`}>
      <div className="two-up">
        <Field
          label="Name on the part"
          value={part}
          onChange={setPart}
          hint="A number or letter that stands on it."
        />
        <Field label={`Read: ${fitting.measured}`} value={reading} onChange={setReading} numeric />
        {halves.length > 0 ? (
          <Choice label="Which half" value={half} onChange={setHalf} of={halves.map(same)} />
        ) : null}
        {component.sizes ? (
          <Choice
            label="Its size"
            value={size}
            onChange={setSize}
            of={['standard', ...component.sizes.steps.map(({ name }) => name)].map(same)}
          />
        ) : null}
        <Choice
          label="Read with"
          value={instrument?.name ?? ''}
          onChange={setNamed}
          of={
            suited.length > 0
              ? suited.map(({ name, kind }) => ({ value: name, words: `${name}, ${kind}` }))
              : [{ value: '', words: 'no instrument was brought' }]
          }
        />
      </div>
      <Refused refusal={refusal} />
      <div>
        <Button type="submit" isDisabled={!measurePart.enabled(job)}>
          {measurePart.label}
        </Button>
      </div>
    </form>
  );
};

const SetAside = ({ fit, part }: { readonly fit: ComponentFit; readonly part: string }) => {
  const act = useAct();
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  return (
    <Aside words={`Set ${part} aside`}>
      <div className="row">
        <Field className="grow" label={`Why ${part} is not to be used`} value={why} onChange={setWhy} />
        <Button onPress={() => setRefusal(act(setPartAside, { component: fit.component.name, part, why }))}>
          {setPartAside.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </Aside>
  );
};

export const Stock = ({ fit }: { readonly fit: ComponentFit }) => (
  <Aside words={`Loose parts measured: ${fit.stock.length}`}>
    <MeasurePart fit={fit} />
    {fit.stock.length > 0 ? (
      <ul className="steps" aria-label={`Loose parts: ${fit.component.title}`}>
        {fit.stock.map(({ name, half, size, measured, place }) => (
          <li key={name} data-part={name}>
            <span className="what">
              <strong>{name}</strong>
              {half === undefined ? '' : `, ${half}`}, size {size}:{' '}
              <span className="figure">
                {measured ? knownText(measured.value, expanded(measured, 0.95)) : 'gives no size'}
              </span>
              {place === undefined ? '' : `, goes to ${place}`}
            </span>
            <SetAside fit={fit} part={name} />
          </li>
        ))}
      </ul>
    ) : null}
  </Aside>
);
