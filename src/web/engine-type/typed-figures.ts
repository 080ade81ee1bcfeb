/** @module Critical figures as the second person has typed them so far: kept on this bench. */
import { useCallback, useState } from 'react';

type Typed = Readonly<Record<string, string>>;

const keyOf = (id: string, by: string): string => `endfloat check ${id} ${by}`;

/** What was typed by the figure's `at`, and a way to change it that stays the same function. */
export const useTypedFigures = (id: string, by: string) => {
  const key = keyOf(id, by);
  const [typed, setTyped] = useState(() => JSON.parse(localStorage.getItem(key) ?? '{}') as Typed);
  const change = useCallback(
    (next: (before: Typed) => Typed) =>
      setTyped((before) => {
        const after = next(before);
        localStorage.setItem(key, JSON.stringify(after));
        return after;
      }),
    [key],
  );
  return [typed, change] as const;
};
