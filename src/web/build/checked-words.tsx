/** @module What the second checks of the pumps come to together: how many are read, how far apart, what is in doubt. */
import type { Checked } from '../../job/pack-correction.ts';
import { toDegrees } from '../../quantity/brand.ts';
import { refusalText } from '../../quantity/refusal.ts';

export const CheckedWords = ({ checked }: { readonly checked: Checked }) => {
  const { read, of, spread, spreadTooWide, notes, putRight } = checked;
  return (
    <>
      <p>
        Checked again: {read} of {of} pumps
        {spread === undefined
          ? ''
          : `; cylinder to cylinder ${toDegrees(spread).toFixed(2)}°${spreadTooWide ? ' ✕ too far apart' : ''}`}
      </p>
      {notes.map((note) => (
        <p key={note} className="caution">
          {note}
        </p>
      ))}
      {putRight?.kind === 'refused' ? (
        <p className="caution">No pack is proposed: {refusalText(putRight.refusal)}.</p>
      ) : null}
    </>
  );
};
