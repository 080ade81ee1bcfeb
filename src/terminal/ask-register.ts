/** @module Asks one thing of the workshop's register and appends what it comes to. */
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import type { RegisterRequest } from '../register/command.ts';
import { decideRegister } from '../register/decide.ts';
import { type RegisterEvent, registerId } from '../register/event.ts';
import { evolveRegister } from '../register/evolve.ts';
import type { Register } from '../register/register.ts';
import type { Store } from '../store/sql-store.ts';
import type { Given } from './command.ts';
import { signerOf } from './workshop.ts';

export type AskedRegister =
  | { readonly kind: 'asked'; readonly event: RegisterEvent; readonly register: Register }
  /** The register refused; nothing was written. */
  | { readonly kind: 'no'; readonly refusal: Refusal };

export const askRegister = async (
  given: Given,
  store: Store,
  before: Register,
  request: RegisterRequest,
): Promise<Answer<AskedRegister>> => {
  const { world } = given;
  const command = { id: world.newId(), job: registerId, at: world.now(), ...signerOf(given), request };
  const event = decideRegister(before, command);
  if (event.kind === 'refused') return answer({ kind: 'no', refusal: event.refusal });
  const appended = await store.register.append(registerId, before.head.sequence, [event.value]);
  return appended.kind === 'stale'
    ? refuse(
        'somebody wrote in the register at the same moment',
        'register',
        'nothing was written: look at it and ask again',
      )
    : answer({ kind: 'asked', event: event.value, register: evolveRegister(before, event.value) });
};
