/** @module Minutes since a moment, as they pass. */
import { useEffect, useState } from 'react';

const tick = 5_000;

/** Minutes since a moment by this tablet's clock, 0 where that is behind it. */
export const useMinutes = (since: string): number => {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), tick);
    return () => clearInterval(timer);
  }, []);
  return Math.max(0, (now - Date.parse(since)) / 60_000);
};
