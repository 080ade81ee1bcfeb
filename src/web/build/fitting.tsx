/** @module Parts from stock: what each place gets, its clearance on the tolerance zone, all of it noted with one press. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { toleranceZone } from '../../drawing/tolerance-zone.ts';
import { type ComponentFit, clearanceWith, fitLimits, fittingsOf, type PlaceFit } from '../../job/fitting.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { errorText, knownText, lengthText } from '../../record/figure-text.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';
import { assignParts } from './build-actions.ts';
import { Stock } from './stock.tsx';

/** What goes in, or what is proposed as long as nothing is noted. */
const shownAt = ({ assigned, proposed }: PlaceFit): readonly string[] | undefined =>
  assigned?.parts ?? proposed?.parts;

const OnePlace = ({ fit, at }: { readonly fit: ComponentFit; readonly at: PlaceFit }) => {
  const job = useJob();
  const parts = shownAt(at);
  const zone = useMemo(() => {
    if (!parts) return undefined;
    const { clearance, expanded, verdict } = clearanceWith(job, fit, at, parts);
    return toleranceZone({
      title: `${at.title}, ${at.assigned ? 'goes in' : 'proposed'}: ${parts.join(' + ')}`,
      limits: { new: at.limits, goesBack: at.limits, printed: {} },
      verdict,
      ...(clearance && { value: clearance.value }),
      ...(expanded !== undefined && { expanded }),
    });
  }, [job, fit, at, parts]);
  return (
    <li data-fit={at.place}>
      <h3>
        {at.title}: {parts ? `${parts.join(' + ')}${at.assigned ? '' : ', proposed'}` : 'no part yet'}
      </h3>
      {zone ? <Drawing drawing={zone} /> : null}
    </li>
  );
};

const Places = ({ fit }: { readonly fit: ComponentFit }) => (
  <div className="scroll">
    <table>
      <thead>
        <tr>
          <th scope="col">Place</th>
          <th scope="col">Room</th>
          <th scope="col">Proposed</th>
          <th scope="col">Clearance</th>
          <th scope="col">Goes in</th>
        </tr>
      </thead>
      <tbody>
        {fit.places.map(({ place, title, size, room, proposed, assigned }) => (
          <tr key={place} data-place-fit={place}>
            <th scope="row">{size === 'standard' ? title : `${title}, ${size}`}</th>
            <td className="figure">{room ? lengthText(room.value) : 'not known yet'}</td>
            <td>{proposed?.parts.join(' + ') ?? 'none'}</td>
            <td>
              {proposed ? (
                <>
                  <span className="figure">{knownText(proposed.clearance.value, proposed.expanded)}</span>{' '}
                  <span className="hint">{errorText(proposed.off)} off the middle</span>
                </>
              ) : (
                ''
              )}
            </td>
            <td>
              {assigned ? (
                <>
                  {assigned.parts.join(' + ')} <VerdictWords verdict={assigned.verdict} />
                </>
              ) : (
                'not noted yet'
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

const proposalWords = ({ set }: ComponentFit): string => {
  if (set.kind === 'refused') return `Nothing is proposed yet: ${refusalText(set.refusal)}.`;
  if (set.value.kind === 'lacking') return `The parts do not serve every place: ${set.value.says}.`;
  const { greatestOff, proved } = set.value;
  return `Furthest from the middle of the limits: ${lengthText(greatestOff)}; ${
    proved
      ? 'no other way to serve every place is better'
      : 'the search was cut short, a better way may exist'
  }.`;
};

const Fitting = ({ fit }: { readonly fit: ComponentFit }) => {
  const job = useJob();
  const act = useAct();
  const [refusal, setRefusal] = useState<Refusal>();
  const { component, set, places, stock } = fit;
  const limits = fitLimits(fit).map(
    ({ least, greatest }) => `from ${lengthText(least)} to ${lengthText(greatest)}`,
  );
  const fitted = set.kind === 'answer' && set.value.kind === 'fitted' ? set.value.fits : undefined;
  const noted =
    fitted?.every(({ place, parts }) =>
      places.some((at) => at.place === place && at.assigned?.parts.join() === parts.join()),
    ) ?? false;
  const accept = () => {
    if (!fitted) return;
    const refused = act(assignParts, {
      component: component.name,
      places: fitted.map(({ place, parts }) => ({ place, parts })),
    });
    setRefusal(refused);
    if (!refused) announce(`Parts for ${component.title} noted.`);
  };
  return (
    <section
      className="part"
      aria-label={`Parts from stock: ${component.title}`}
      data-fitting={component.name}
    >
      <h2>Parts from stock: {component.title}</h2>
      <p>
        Clearance {limits.join(' or ')}. {proposalWords(fit)}
      </p>
      {stock.length > 0 ? <Places fit={fit} /> : null}
      {fitted && !noted ? (
        <div>
          <Button className="first" isDisabled={!assignParts.enabled(job)} onPress={accept}>
            {assignParts.label}
          </Button>
        </div>
      ) : null}
      <Refused refusal={refusal} />
      {places.some((at) => shownAt(at)) ? (
        <ul className="zones">
          {places.map((at) => (
            <OnePlace key={at.place} fit={fit} at={at} />
          ))}
        </ul>
      ) : null}
      <Stock fit={fit} />
    </section>
  );
};

export const Fittings = () => {
  const job = useJob();
  return fittingsOf(job).map((fit) => <Fitting key={fit.component.name} fit={fit} />);
};
