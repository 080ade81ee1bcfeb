/** @module What if: suppliers left out, options fixed by hand, prices changed; each change plans anew at once. */
import { useState } from 'react';
import type { EngineType } from '../../engine/engine-type.ts';
import type { Demands, Option } from '../../plan/plan-model.ts';
import { leavingOut } from '../../plan/what-if.ts';
import { Choice } from '../shell/field.tsx';
import { FixedChoices } from './fixed-choices.tsx';
import { PricesAsked } from './prices-asked.tsx';

interface WhatIfProps {
  readonly engine: EngineType;
  /** What is open, at its own price. */
  readonly options: readonly Option[];
  readonly demands: Demands;
  readonly currency: string;
  readonly onDemands: (demands: Demands) => void;
}

const Suppliers = ({ options, demands, onDemands }: WhatIfProps) => {
  const suppliers = [...new Set(options.map(({ supplier }) => supplier))]
    .filter((name) => name !== '')
    .sort();
  return (
    <fieldset>
      <legend>Leave out</legend>
      <div className="two-up">
        {suppliers.map((supplier) => (
          <label key={supplier} className="check">
            <input
              type="checkbox"
              checked={(demands.withoutSuppliers ?? []).includes(supplier)}
              onChange={(event) => onDemands(leavingOut(demands, supplier, event.target.checked))}
            />
            <span>{supplier}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
};

export const WhatIf = (props: WhatIfProps) => {
  const { engine, options } = props;
  const components = [...engine.components.values()].filter(({ name }) =>
    options.some(({ component }) => component === name),
  );
  const [component, setComponent] = useState(components[0]?.name ?? '');
  const own = options.filter((option) => option.component === component);
  return (
    <details className="what-if no-print">
      <summary>What if: leave out a supplier, fix what is done, change a price</summary>
      <div className="column">
        <Suppliers {...props} />
        <Choice
          label="Component"
          value={component}
          onChange={setComponent}
          of={components.map(({ name, title }) => ({ value: name, words: title }))}
        />
        <FixedChoices {...props} options={own} />
        <PricesAsked {...props} options={own} key={component} />
      </div>
    </details>
  );
};
