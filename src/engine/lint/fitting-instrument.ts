/** @module Rule: the kind of instrument named for a characteristic measures what the characteristic is a figure of. */
import { dimensionText } from '../../quantity/unit.ts';
import type { EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { instrumentKinds, kindOf } from '../instrument-kind.ts';
import { quantityOf } from '../shown-in.ts';

export const fittingInstrument = ({ characteristics }: EngineType): readonly Finding[] =>
  [...characteristics.values()].flatMap((of) => {
    const { name, title, instrument } = of;
    const quantity = quantityOf(of);
    if (instrument === undefined || kindOf(instrument).measures === quantity) return [];
    const fit = instrumentKinds
      .filter(({ measures, master }) => measures === quantity && !master)
      .map((kind) => kind.name);
    return [
      wrong(
        ['characteristics', name, 'instrument'],
        `${title} is a ${dimensionText(quantity)}, and a ${instrument} measures a ${dimensionText(kindOf(instrument).measures)}`,
        `name a ${fit.join(', a ')}, or leave the instrument out`,
      ),
    ];
  });
