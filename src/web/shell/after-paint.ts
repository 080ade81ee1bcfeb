/** @module A value that follows another once what changed has been painted: for what may lag a frame behind a verdict. */
import { useEffect, useState } from 'react';

export const useAfterPaint = <T>(value: T): T => {
  const [followed, setFollowed] = useState(value);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    // The frame's callbacks run before it is painted; a task from there runs after.
    const frame = requestAnimationFrame(() => {
      timer = setTimeout(() => setFollowed(value));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [value]);
  return followed;
};
