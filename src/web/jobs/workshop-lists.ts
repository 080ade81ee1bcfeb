/** @module Lists kept by the workshop: jobs, engine types, instruments. */
import { useQuery } from '@tanstack/react-query';
import type { JobLine } from '../../job/job-line.ts';
import type { Instrument } from '../../measure/instrument.ts';

export interface EngineTypeListed {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly text: string;
}

const list =
  <T>(address: string, name: string) =>
  async (): Promise<readonly T[]> => {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
    const body = (await answer.json()) as Readonly<Record<string, readonly T[]>>;
    return body[name] ?? [];
  };

export const useJobs = () =>
  useQuery({ queryKey: ['jobs'], queryFn: list<JobLine>('/api/jobs', 'jobs'), refetchInterval: 15_000 });

export const useEngineTypes = () =>
  useQuery({
    queryKey: ['engine types'],
    queryFn: list<EngineTypeListed>('/api/engine-types', 'engineTypes'),
  });

export const useInstruments = () =>
  useQuery({ queryKey: ['instruments'], queryFn: list<Instrument>('/api/instruments', 'instruments') });
