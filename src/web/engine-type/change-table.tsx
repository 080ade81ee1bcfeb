/** @module What changed from one version to another, figure by figure. */
import type { Change } from '../../engine/edit/changes.ts';

export const ChangeTable = ({
  caption,
  changes,
}: {
  readonly caption: string;
  readonly changes: readonly Change[];
}) =>
  changes.length === 0 ? (
    <p>{caption}: no figure and no words changed.</p>
  ) : (
    <section className="scroll" aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">what</th>
            <th scope="col">where</th>
            <th scope="col">was</th>
            <th scope="col">is</th>
          </tr>
        </thead>
        <tbody>
          {changes.map((change) => (
            <tr key={change.where}>
              <td>{change.kind}</td>
              <td>{change.where}</td>
              <td className="typed">{change.before ?? ''}</td>
              <td className="typed">{change.after ?? ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
