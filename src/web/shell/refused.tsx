/** @module Why something was not done: what, where and what to do about it. */
import type { Refusal } from '../../quantity/refusal.ts';

export const Refused = ({ refusal }: { readonly refusal: Refusal | undefined }) => (
  <div role="alert">
    {refusal === undefined ? null : (
      <div className="refused">
        <strong>
          <span aria-hidden="true">✕ </span>
          Not done: {refusal.what}
          {refusal.where === '' ? '' : ` (${refusal.where})`}.
        </strong>
        <span> {refusal.remedy}.</span>
      </div>
    )}
  </div>
);
