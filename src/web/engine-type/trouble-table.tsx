/** @module What is wrong in a file, line by line or row by row. */
import type { RowTrouble } from '../../engine/table-row.ts';
import type { Trouble } from '../../engine/trouble.ts';
import { refusalText } from '../../quantity/refusal.ts';

export const TroubleTable = ({
  caption,
  troubles,
}: {
  readonly caption: string;
  readonly troubles: readonly Trouble[];
}) =>
  troubles.length === 0 ? null : (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">weight</th>
          <th scope="col" className="number">
            line
          </th>
          <th scope="col" className="number">
            column
          </th>
          <th scope="col">what, and what to do</th>
        </tr>
      </thead>
      <tbody>
        {troubles.map((trouble) => (
          <tr key={`${trouble.line}:${trouble.column}:${trouble.what}`}>
            <td>{trouble.weight}</td>
            <td className="number figure">{trouble.line}</td>
            <td className="number figure">{trouble.column}</td>
            <td>{refusalText(trouble)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );

export const RowTroubleTable = ({ troubles }: { readonly troubles: readonly RowTrouble[] }) =>
  troubles.length === 0 ? null : (
    <table>
      <caption>What is wrong in the file, row by row</caption>
      <thead>
        <tr>
          <th scope="col">weight</th>
          <th scope="col" className="number">
            row
          </th>
          <th scope="col">what, and what to do</th>
        </tr>
      </thead>
      <tbody>
        {troubles.map((trouble) => (
          <tr key={`${trouble.row}:${trouble.where}:${trouble.what}`}>
            <td>{trouble.weight}</td>
            <td className="number figure">{trouble.row > 0 ? trouble.row : 'file'}</td>
            <td>{refusalText(trouble)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
