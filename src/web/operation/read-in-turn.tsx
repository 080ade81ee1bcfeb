/** @module Reading one cell after another at an operation: the entry goes to what is next as each is taken. */
import { useState } from 'react';
import type { Cell } from '../../measure/reading.ts';
import { useJob } from '../journal/use-desk.tsx';
import { Entry } from '../measure/entry.tsx';

/** The cell in hand: the one chosen until it is taken, else what is next. */
export const useInTurn = (next: Cell | undefined) => {
  const [chosen, setChosen] = useState<Cell>();
  const [turn, setTurn] = useState(0);
  const choose = (cell: Cell) => {
    setChosen(cell);
    setTurn(turn + 1);
  };
  const onTaken = () => {
    setChosen(undefined);
    setTurn(turn + 1);
  };
  return { cell: chosen ?? next, turn, choose, onTaken };
};

export const ReadInTurn = ({
  inTurn: { cell, turn, onTaken },
}: {
  readonly inTurn: ReturnType<typeof useInTurn>;
}) => {
  const job = useJob();
  return cell === undefined || job.handedOver !== undefined ? null : (
    <Entry job={job} cell={cell} turn={turn} onTaken={onTaken} />
  );
};
