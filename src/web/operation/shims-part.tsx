/** @module Shim packs at the operation that fits the pumps: the box counted, each pack chosen and fitted. */
import { useMemo } from 'react';
import type { Operation } from '../../engine/engine-type.ts';
import { pumpPacksOf } from '../../job/pumps.ts';
import { Packs } from '../build/packs.tsx';
import { ShimBox } from '../build/shim-box.tsx';
import { useJob } from '../journal/use-desk.tsx';

export const ShimsPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const packs = useMemo(() => pumpPacksOf(job), [job]);
  const { timing } = packs;
  if (timing === undefined || operation.at !== timing.at || !operation.needs.includes(timing.depth))
    return null;
  return (
    <>
      <ShimBox timing={timing} />
      <Packs packs={packs} />
    </>
  );
};
