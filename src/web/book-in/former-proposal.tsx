/** @module Former overhauls of an engine that the shop knows by its type and plate, and whether their sizes are brought. */
import { useQuery } from '@tanstack/react-query';
import type { RequestOf } from '../../job/command.ts';
import { formerWords } from '../../measure/former.ts';
import type { FormerOverhaul } from '../../measure/former-overhaul.ts';
import type { Action } from '../shell/action.ts';
import { Choice } from '../shell/field.tsx';

export const bringFormer: Action<Omit<RequestOf<'bring former overhaul'>, 'kind'>> = {
  name: 'bring-former-overhaul',
  label: 'Bring its sizes to this job',
  enabled: (job) => job.handedOver === undefined,
  request: (former) => ({ kind: 'bring former overhaul', ...former }),
};

/** @param but  the job that they are for, where it is booked in already */
export const useFormers = (engine: string, plate: string, but = ''): readonly FormerOverhaul[] => {
  const query = useQuery({
    queryKey: ['former overhauls', engine, plate, but],
    enabled: engine !== '' && plate.trim() !== '',
    queryFn: async () => {
      const answer = await fetch(`/api/former-overhauls?${new URLSearchParams({ engine, plate, but })}`);
      if (!answer.ok) throw new Error(`former overhauls answered ${answer.status}`);
      return ((await answer.json()) as { readonly former: readonly FormerOverhaul[] }).former;
    },
  });
  return query.data ?? [];
};

/** `''` for none. */
export const FormerProposal = ({
  formers,
  chosen,
  onChange,
}: {
  readonly formers: readonly FormerOverhaul[];
  readonly chosen: string;
  readonly onChange: (number: string) => void;
}) =>
  formers.length === 0 ? null : (
    <Choice
      label="This engine was here before"
      value={chosen}
      onChange={onChange}
      hint="What is read now is held against the sizes that it went with."
      of={[
        ...formers.map((former) => ({
          value: former.number,
          words: `bring the sizes of ${formerWords(former)}`,
        })),
        { value: '', words: 'bring none' },
      ]}
    />
  );
