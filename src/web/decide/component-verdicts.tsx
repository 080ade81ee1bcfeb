/** @module Verdicts drawn together by component: what speaks for putting it back and what against. */
import { counts } from '../../job/judged.ts';
import { opensKind, scopeOf } from '../../job/scope.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Judged, Verdict } from '../../measure/verdict-model.ts';
import { judgedByComponent } from '../../plan/judged-by.ts';
import { useJob } from '../journal/use-desk.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';

const order: readonly Verdict[] = ['outside', 'unsure', 'not yet known', 'within'];

const Counted = ({
  judged,
  verdict,
  sheet,
}: {
  readonly judged: readonly Judged[];
  readonly verdict: Verdict;
  readonly sheet: Sheet;
}) => {
  const of = judged.filter((one) => one.verdict === verdict);
  if (of.length === 0) return <td className="number">—</td>;
  const named =
    verdict === 'outside' || verdict === 'unsure' ? [...new Set(of.map(({ place }) => place))] : [];
  return (
    <td className="number">
      <strong>{of.length}</strong> <VerdictWords verdict={verdict} />
      {named.length > 0 ? (
        <span className="faint">
          <br />
          {named
            .slice(0, 4)
            .map((id) => sheet.engine.places.get(id)?.title ?? id)
            .join(', ')}
          {named.length > 4 ? ' …' : ''}
        </span>
      ) : null}
    </td>
  );
};

export const ComponentVerdicts = () => {
  const job = useJob();
  const { sheet } = job;
  const asked = counts(scopeOf(job));
  const byComponent = judgedByComponent(sheet);
  return (
    <div className="scroll">
      <table>
        <caption>Verdicts by component</caption>
        <thead>
          <tr>
            <th scope="col">component</th>
            {order.map((verdict) => (
              <th key={verdict} scope="col" className="number">
                {verdict}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {[...sheet.engine.components.values()].map((component) => {
            const judged = (byComponent.get(component.name) ?? []).filter(asked);
            return judged.length === 0 && !opensKind(job, component.at) ? null : (
              <tr key={component.name}>
                <th scope="row">{component.title}</th>
                {order.map((verdict) => (
                  <Counted key={verdict} judged={judged} verdict={verdict} sheet={sheet} />
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
};
