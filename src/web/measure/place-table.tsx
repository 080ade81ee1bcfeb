/** @module Everything read and worked out at one place; each cell is a way to read it again. */
import { memo } from 'react';
import type { EngineType } from '../../engine/engine-type.ts';
import { bareFigure, bareSpread, type ShownIn, shownIn } from '../../engine/shown-in.ts';
import { type Cell, cellKey, type Reading } from '../../measure/reading.ts';
import type { Judged, JudgedCell } from '../../measure/verdict-model.ts';
import { VerdictWords } from '../shell/verdict-words.tsx';

interface TableProps {
  readonly engine: EngineType;
  readonly judged: Judged;
  readonly readings: ReadonlyMap<string, readonly Reading[]>;
  readonly at: string;
  readonly onCell: (cell: Cell) => void;
}

const CellButton = ({
  judged,
  readings,
  at,
  name,
  onCell,
}: Omit<TableProps, 'engine' | 'judged'> & { readonly judged: JudgedCell; readonly name: string }) => {
  const key = cellKey(judged.cell);
  const taken = readings.get(key) ?? [];
  const last = taken.at(-1);
  return (
    <button
      type="button"
      className="cell-button"
      onClick={() => onCell(judged.cell)}
      {...(key === at ? { 'aria-current': 'true' as const } : {})}
    >
      <span className="heard-only">{name}: </span>
      <span className="figure">{last ? `${last.typed.text} ${last.typed.unit}` : '—'}</span>
      <span>{last ? <VerdictWords verdict={judged.verdict} /> : 'not read'}</span>
      {taken.length > 1 ? <span className="faint">{taken.length} times</span> : null}
    </button>
  );
};

/** Planes down, axes across, as the sheet in the shop has it. */
const CharacteristicTable = memo(
  ({ engine, judged, readings, at, onCell }: TableProps) => {
    const known = engine.characteristics.get(judged.characteristic);
    if (!known) return null;
    const cellOf = (plane: string, axis: string) =>
      judged.cells.find(({ cell }) => cell.plane === plane && cell.axis === axis);
    const axes = known.axes.some((axis) => axis !== '');
    const planes = known.planes.some((plane) => plane !== '');
    return (
      <div className="scroll">
        <table>
          <caption>
            {known.title}: <VerdictWords verdict={judged.verdict} />
          </caption>
          {axes ? (
            <thead>
              <tr>
                {planes ? <td /> : null}
                {known.axes.map((axis) => (
                  <th key={axis} scope="col">
                    {axis}
                  </th>
                ))}
              </tr>
            </thead>
          ) : null}
          <tbody>
            {known.planes.map((plane) => (
              <tr key={plane}>
                {planes ? <th scope="row">{plane}</th> : null}
                {known.axes.map((axis) => {
                  const cell = cellOf(plane, axis);
                  return (
                    <td key={axis} style={{ padding: 4 }}>
                      {cell ? (
                        <CellButton
                          judged={cell}
                          readings={readings}
                          at={at}
                          onCell={onCell}
                          name={[known.title, plane, axis].filter((part) => part !== '').join(', ')}
                        />
                      ) : null}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    );
  },
  (before, now) => {
    const here = (key: string) => now.judged.cells.some(({ cell }) => cellKey(cell) === key);
    return (
      before.judged === now.judged &&
      before.onCell === now.onCell &&
      (before.at === now.at || (!here(before.at) && !here(now.at)))
    );
  },
);

const figure = ({ value, expanded }: Judged, shown: ShownIn): string =>
  value === undefined
    ? '—'
    : `${bareFigure(value.value, shown)} ± ${bareSpread(expanded ?? 0, shown)} ${shown.unit}`;

export const PlaceTable = ({
  engine,
  judged,
  readings,
  at,
  onCell,
}: Omit<TableProps, 'judged'> & { readonly judged: readonly Judged[] }) => {
  const derived = judged.filter(({ characteristic }) => engine.characteristics.get(characteristic)?.derived);
  return (
    <>
      {judged
        .filter((one) => one.cells.length > 0)
        .map((one) => (
          <CharacteristicTable
            key={one.characteristic}
            engine={engine}
            judged={one}
            readings={readings}
            at={at}
            onCell={onCell}
          />
        ))}
      {derived.length === 0 ? null : (
        <div className="scroll">
          <table>
            <caption>Worked out from these</caption>
            <tbody>
              {derived.map((one) => (
                <tr key={one.characteristic}>
                  <th scope="row">{engine.characteristics.get(one.characteristic)?.title}</th>
                  <td className="number figure">
                    {figure(one, shownIn(engine.characteristics.get(one.characteristic)))}
                  </td>
                  <td>
                    <VerdictWords verdict={one.verdict} />
                    {one.missing.length > 0 ? ` (${one.missing.length} still to read)` : ''}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
};
