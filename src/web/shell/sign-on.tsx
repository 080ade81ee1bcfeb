/** @module Asks who stands at this bench before anything is written down. */
import { lazy, type ReactNode, Suspense, useSyncExternalStore } from 'react';
import { signOn, whoChanges, whoNow } from './who.ts';

// Asked once a bench: whoever is known need not fetch the form.
const SignOnForm = lazy(() => import('./sign-on-form.tsx'));

export const SignOn = ({ children }: { readonly children: ReactNode }) => {
  const who = useSyncExternalStore(whoChanges, whoNow);
  return who.actor === '' ? (
    <Suspense>
      <SignOnForm />
    </Suspense>
  ) : (
    children
  );
};

export const SignedOn = () => {
  const who = useSyncExternalStore(whoChanges, whoNow);
  return (
    <button type="button" className="signed-on" onClick={() => signOn({ ...who, actor: '' })}>
      <span className="cell-name">fitter (change)</span>
      {who.actor}, {who.bench}
    </button>
  );
};
