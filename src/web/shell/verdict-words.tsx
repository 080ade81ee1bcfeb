/** @module A verdict in its word, with its sign before it. */
import type { Verdict } from '../../measure/verdict-model.ts';

export const VerdictWords = ({ verdict }: { readonly verdict: Verdict }) => (
  <span className={`verdict ${verdict.replaceAll(' ', '-')}`}>{verdict}</span>
);
