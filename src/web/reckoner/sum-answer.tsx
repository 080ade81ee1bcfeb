/** @module What a sum came to: its picture, its results, its notes. */
import { useMemo } from 'react';
import type { Picture } from '../../drawing/reckoned/picture.ts';
import { coverageFactor } from '../../quantity/coverage.ts';
import type { Reckoned, Result, Values } from '../../reckon/reckoning.ts';
import { knownText, unitText } from '../../reckon/result-text.ts';
import { Drawing } from '../drawing/drawing.tsx';

const half = coverageFactor(0.95, Infinity);

/** `pump.1.timing-error` as it is read aloud: `pump 1: timing error`; the point of a figure stays. */
const named = (key: string): string =>
  key
    .replaceAll('-', ' ')
    .replaceAll(/(?<=[a-z])\.(?=\d)/g, ' ')
    .replaceAll(/\.(?=[a-z])/g, ': ');

const Row = ({ name, result }: { readonly name: string; readonly result: Result }) => {
  const { value, spread } = knownText(result, half);
  return (
    <tr>
      <th scope="row">{named(name)}</th>
      <td className={typeof result.value === 'string' ? '' : 'number figure'}>
        <strong>{value}</strong>
        {spread === undefined ? '' : ` ± ${spread}`}
      </td>
      <td>{unitText(result)}</td>
    </tr>
  );
};

export const SumAnswer = ({
  given,
  reckoned,
  picture,
}: {
  readonly given: Values;
  readonly reckoned: Reckoned;
  readonly picture: Picture | undefined;
}) => {
  const drawing = useMemo(() => picture?.(given, reckoned), [picture, given, reckoned]);
  return (
    <>
      <table>
        <caption>What comes of it</caption>
        <tbody>
          {Object.entries(reckoned.results).map(([name, result]) => (
            <Row key={name} name={name} result={result} />
          ))}
        </tbody>
      </table>
      {reckoned.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {drawing === undefined ? null : <Drawing drawing={drawing} className="sum-picture" />}
    </>
  );
};
