/** @module The shims in the box, counted thickness by thickness. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { PumpTiming } from '../../engine/pump-timing.ts';
import { looseShims } from '../../job/box.ts';
import { type Refusal, refuse } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { countShims } from './build-actions.ts';

const thicknessText = (thickness: number): string =>
  Number(thickness.toFixed(5)).toFixed(2 + (Math.round(thickness * 1000) % 10 === 0 ? 0 : 1));

export const ShimBox = ({ timing }: { readonly timing: PumpTiming }) => {
  const job = useJob();
  const act = useAct();
  const [counts, setCounts] = useState<Readonly<Record<string, string>>>({});
  const [refusal, setRefusal] = useState<Refusal>();
  const loose = new Map(looseShims(job).map(({ thickness, count }) => [thicknessText(thickness), count]));
  const made = [...new Set([...timing.shims.map(thicknessText), ...loose.keys()])];
  const shown = (thickness: string) => counts[thickness] ?? String(loose.get(thickness) ?? 0);
  const note = (event: FormEvent) => {
    event.preventDefault();
    const bad = made.find((thickness) => !/^\d{1,4}$/.test(shown(thickness).trim()));
    if (bad !== undefined) {
      const wrong = refuse(
        `“${shown(bad)}” is no count`,
        `shims of ${bad} mm`,
        'type how many there are, or 0',
      );
      return setRefusal(wrong.kind === 'refused' ? wrong.refusal : undefined);
    }
    const shims = made
      .map((thickness) => ({ thickness: { text: thickness, unit: 'mm' }, count: Number(shown(thickness)) }))
      .filter(({ count }) => count > 0);
    const refused = act(countShims, { shims });
    setRefusal(refused);
    if (!refused) setCounts({});
  };
  return (
    <section className="part" aria-label="Shims in the box">
      <h2>Shims in the box</h2>
      <p>Count what lies loose; packs under pumps are known already.</p>
      <form onSubmit={note} className="column">
        <div className="shims">
          {made.map((thickness) => (
            <Field
              key={thickness}
              label={`${thickness} mm`}
              value={shown(thickness)}
              onChange={(count) => setCounts({ ...counts, [thickness]: count })}
              numeric
            />
          ))}
        </div>
        <Refused refusal={refusal} />
        <div>
          <Button type="submit" isDisabled={!countShims.enabled(job)}>
            {countShims.label}
          </Button>
        </div>
      </form>
    </section>
  );
};
