/** @module Saves what was changed in an engine type as its next version, or drops it. */
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import { readCheckedType } from '../../job/sum/checked-engine-type.ts';
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { whoNow } from '../shell/who.ts';
import type { Draft } from './draft.ts';
import { useSaving } from './shelf.ts';

const stands = (draft: Draft, errors: number, warnings: number): string => {
  const wrong = errors === 0 ? 'no errors' : `${errors} ${errors === 1 ? 'error' : 'errors'} to mend first`;
  const odd = warnings === 0 ? '' : `, ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`;
  return draft.changed ? `Changed on this bench: ${wrong}${odd}.` : `Nothing changed yet: ${wrong}${odd}.`;
};

export const Saving = ({ newest, draft }: { readonly newest: EngineTypeListed; readonly draft: Draft }) => {
  const saving = useSaving(newest.id);
  const { engine, troubles } = useMemo(() => readCheckedType(draft.text), [draft.text]);
  const errors = troubles.filter(({ weight }) => weight === 'error').length;
  const save = async () => {
    const done = await saving.mutateAsync({ text: draft.text, after: draft.after, by: whoNow().actor });
    if (done.kind === 'refused') return;
    draft.drop();
    announce(`Saved as version ${done.engineType.version}.`);
  };
  return (
    <section className="part saving" aria-label="Save">
      <div className="row">
        <p className="grow" role="status">
          {stands(draft, errors, troubles.length - errors)}
          {saving.data?.kind === 'shelved' && !draft.changed
            ? ` Saved as version ${saving.data.engineType.version}; jobs keep the version that they began with.`
            : ''}
        </p>
        <Button onPress={draft.drop} isDisabled={!draft.changed}>
          Drop the changes
        </Button>
        <Button
          className="first"
          onPress={save}
          isDisabled={!draft.changed || engine === undefined || saving.isPending}
        >
          Save as version {draft.after + 1}
        </Button>
      </div>
      {draft.after === newest.version ? null : (
        <div className="note">
          <p>
            Version {newest.version} has been saved by somebody since these changes were begun on version{' '}
            {draft.after}. Look under Versions at what changed there, then drop these changes, or keep this
            text in its place.
          </p>
          <Button onPress={() => draft.putOn(newest.version)}>
            Keep this text, on top of version {newest.version}
          </Button>
        </div>
      )}
      <Refused refusal={saving.data?.kind === 'refused' ? saving.data.refusal : undefined} />
    </section>
  );
};
