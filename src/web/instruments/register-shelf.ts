/** @module The register of instruments as this bench asks for it: its journal, what is in question, and commands. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { v7 } from 'uuid';
import type { Refusal } from '../../quantity/refusal.ts';
import type { RegisterRequest } from '../../register/command.ts';
import { decideRegister } from '../../register/decide.ts';
import { registerId } from '../../register/event.ts';
import { replayRegister } from '../../register/evolve.ts';
import type { InstrumentInQuestion } from '../../register/in-question.ts';
import { readRegisterEvents } from '../../register/read.ts';
import type { Register } from '../../register/register.ts';
import { whoNow } from '../shell/who.ts';

const asked = async (address: string): Promise<Readonly<Record<string, unknown>>> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
  return (await answer.json()) as Readonly<Record<string, unknown>>;
};

export const useRegister = () =>
  useQuery({
    queryKey: ['register'],
    queryFn: async (): Promise<Register> => {
      const read = readRegisterEvents((await asked('/api/register/events')).events);
      if (read.kind === 'refused') throw new Error(read.refusal.what);
      return replayRegister(read.value);
    },
  });

export const useInQuestion = () =>
  useQuery({
    queryKey: ['in question'],
    queryFn: async () =>
      (await asked('/api/register/in-question')).instruments as readonly InstrumentInQuestion[],
  });

const away: Refusal = {
  what: 'the workshop’s store does not answer',
  where: 'register',
  remedy: 'nothing is known to be noted: look whether the server runs, and press again',
};

/** Asks one thing of the register; pressed again after no answer it is the same command, and counts once. */
export const useAsk = () => {
  const queries = useQueryClient();
  const unanswered = useRef<{ readonly text: string; readonly id: string }>(undefined);
  return useMutation({
    mutationFn: async (request: RegisterRequest): Promise<Refusal | undefined> => {
      const text = JSON.stringify(request);
      const id = unanswered.current?.text === text ? unanswered.current.id : v7();
      unanswered.current = { text, id };
      const command = { id, job: registerId, at: new Date().toISOString(), ...whoNow(), request };
      const register = queries.getQueryData<Register>(['register']);
      // What the register would refuse is said here and now; the store decides again on what it then holds.
      const here = register && decideRegister(register, command);
      if (here?.kind === 'refused') return here.refusal;
      try {
        const answer = await fetch('/api/register/commands', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ command }),
        });
        if (answer.status >= 500) return away;
        const body = (await answer.json()) as { readonly refusal?: Refusal };
        unanswered.current = undefined;
        return body.refusal;
      } catch {
        return away;
      }
    },
    onSuccess: async () => {
      for (const queryKey of [['register'], ['in question'], ['instruments']])
        await queries.invalidateQueries({ queryKey });
    },
  });
};
