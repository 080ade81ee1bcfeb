/** @module The shelf of engine types as this bench asks for it: versions, the next version, the second person's check. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { FigureApart } from '../../engine/edit/second-check.ts';
import type { Trouble } from '../../engine/trouble.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';

const address = (id: string, what: string): string => `/api/engine-types/${encodeURIComponent(id)}/${what}`;

/** Every version of one type, the newest first. */
export const useVersions = (id: string) =>
  useQuery({
    queryKey: ['engine type', id],
    queryFn: async (): Promise<readonly EngineTypeListed[]> => {
      const answer = await fetch(address(id, 'versions'));
      if (answer.status === 404) return [];
      if (!answer.ok) throw new Error(`the shelf answered ${answer.status}`);
      return ((await answer.json()) as { readonly versions: readonly EngineTypeListed[] }).versions;
    },
  });

export type Shelved =
  | {
      readonly kind: 'shelved';
      readonly engineType: EngineTypeListed;
      /** Of a check: the figures that were read otherwise. */
      readonly apart: readonly FigureApart[];
    }
  | { readonly kind: 'refused'; readonly refusal: Refusal; readonly troubles: readonly Trouble[] };

const away: Refusal = {
  what: 'the workshop’s store does not answer',
  where: 'shelf of engine types',
  remedy: 'look whether the server runs; what you typed is kept on this bench',
};

const send = async (path: string, body: unknown): Promise<Shelved> => {
  try {
    const answer = await fetch(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const said = (await answer.json()) as {
      readonly engineType?: EngineTypeListed;
      readonly apart?: readonly FigureApart[];
      readonly refusal?: Refusal;
      readonly troubles?: readonly Trouble[];
    };
    return said.engineType
      ? { kind: 'shelved', engineType: said.engineType, apart: said.apart ?? [] }
      : { kind: 'refused', refusal: said.refusal ?? away, troubles: said.troubles ?? [] };
  } catch {
    return { kind: 'refused', refusal: away, troubles: [] };
  }
};

const useSent = <T>(id: string, what: string) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: T) => send(address(id, what), body),
    onSuccess: async () => {
      await queries.invalidateQueries({ queryKey: ['engine type', id] });
      await queries.invalidateQueries({ queryKey: ['engine types'] });
    },
  });
};

/** Puts a type on the shelf that is not there yet. */
export const useShelving = () => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: { readonly text: string }) => send('/api/engine-types', body),
    onSuccess: () => queries.invalidateQueries({ queryKey: ['engine types'] }),
  });
};

export const useSaving = (id: string) =>
  useSent<{ readonly text: string; readonly after: number; readonly by: string }>(id, 'versions');

export const useChecking = (id: string) =>
  useSent<{
    readonly after: number;
    readonly by: string;
    readonly figures: readonly { readonly at: string; readonly reads: string }[];
  }>(id, 'check');
