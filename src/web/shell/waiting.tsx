/** @module What the store does not have yet, and what it would not take. */
import { Button } from 'react-aria-components';
import { refusalText } from '../../quantity/refusal.ts';
import type { Desk, DeskKeeper } from '../journal/desk.ts';
import { benchPictures } from '../journal/picture-box.ts';
import { TurnedPicture } from '../picture/turned-picture.tsx';

export const Waiting = ({ desk }: { readonly desk: Desk }) => (
  <dl className={`waiting ${desk.waiting > 0 ? 'some' : ''}`}>
    <dt>store{desk.reach === 'away' ? ' (no answer, trying again)' : ''}</dt>
    <dd data-waiting={desk.waiting}>{desk.waiting === 0 ? 'all sent' : `not yet sent: ${desk.waiting}`}</dd>
  </dl>
);

export const TurnedBackNotes = ({ desk, keeper }: { readonly desk: Desk; readonly keeper: DeskKeeper }) =>
  desk.turnedBack.length === 0 ? null : (
    <section className="refused column" aria-label="Not taken by the store" role="alert">
      {desk.turnedBack.map((turned) => (
        <div key={turned.command.id} className="row">
          <p className="grow">
            <strong>The store did not take “{turned.command.request.kind}”.</strong>{' '}
            {refusalText(turned.refusal)}. It was asked by {turned.command.actor} at{' '}
            {turned.command.at.slice(11, 16)}
            {turned.command.request.kind === 'take reading' ? `: ${turned.command.request.typed.text}` : ''}.
          </p>
          {turned.command.request.kind === 'take picture' ? (
            <TurnedPicture picture={turned.command.request.picture} />
          ) : null}
          <Button
            onPress={() => {
              keeper.forget(turned);
              if (turned.command.request.kind === 'take picture')
                void benchPictures.drop(turned.command.request.picture.hash);
            }}
          >
            Read and put aside
          </Button>
        </div>
      ))}
    </section>
  );
