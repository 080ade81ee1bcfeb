/** @module Critical figures as the second person has typed them so far: kept on this bench. */
import { useCallback, useState } from 'react';

const keyOf = (id: string, by: string): string => `endfloat check ${id} ${by}`;

export const useTypedFigures = (id: string, by: string) => {
  const key = keyOf(id, by);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(
    () => JSON.parse(localStorage.getItem(key) ?? '{}') as Readonly<Record<string, string>>,
  );
  const keep = useCallback(
    (next: Readonly<Record<string, string>>) => {
      localStorage.setItem(key, JSON.stringify(next));
      setTyped(next);
    },
    [key],
  );
  return [typed, keep] as const;
};
