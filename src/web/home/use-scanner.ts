/** @module A scanner that types like a keyboard: what it types while no field has the keys, up to its Enter. */
import { useEffect, useRef } from 'react';

/** A scanner types faster than any hand: a longer pause begins a new text, milliseconds. */
const pause = 250;
/** One key is a person's. */
const least = 2;

const inField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.matches('input, textarea, select') || target.isContentEditable);

/**
 * Hears a scanner wherever the keys are, but for a field, which takes the text itself. The Enter that ends a text
 * presses nothing, whatever button has the keys.
 */
export const useScanner = (onText: (text: string) => void): void => {
  const heard = useRef(onText);
  useEffect(() => {
    heard.current = onText;
  });
  useEffect(() => {
    let text = '';
    let last = 0;
    const onKey = (event: KeyboardEvent) => {
      if (inField(event.target) || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.timeStamp - last > pause) text = '';
      last = event.timeStamp;
      if (event.key === 'Enter' && text.length >= least) {
        event.preventDefault();
        event.stopPropagation();
        heard.current(text);
        text = '';
      } else if (event.key.length === 1) {
        // A space would press a button.
        if (text !== '') event.preventDefault();
        text += event.key;
      }
    };
    document.addEventListener('keydown', onKey, true);
    return () => document.removeEventListener('keydown', onKey, true);
  }, []);
};
