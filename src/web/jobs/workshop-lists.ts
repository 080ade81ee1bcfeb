/** @module Lists kept by the workshop: jobs, engine types, instruments. */
import { useQuery } from '@tanstack/react-query';
import type { Instrument } from '../../measure/instrument.ts';

/** One line of the list of jobs, as the server tells it. */
export interface JobListed {
  readonly job: string;
  readonly number: string;
  readonly engine: string;
  readonly owner: string;
  readonly plate: string;
  readonly phase: string;
  readonly readings: number;
  readonly changed: string;
}

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
  useQuery({ queryKey: ['jobs'], queryFn: list<JobListed>('/api/jobs', 'jobs'), refetchInterval: 15_000 });

export const useEngineTypes = () =>
  useQuery({
    queryKey: ['engine types'],
    queryFn: list<EngineTypeListed>('/api/engine-types', 'engineTypes'),
  });

export const useInstruments = () =>
  useQuery({ queryKey: ['instruments'], queryFn: list<Instrument>('/api/instruments', 'instruments') });
