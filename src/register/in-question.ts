/** @module What is in question: every reading and joint made with an instrument while it may have been wrong. */
import type { Typed } from '../quantity/typed.ts';
import { doubtfulSpans, type Span, within } from './doubtful-span.ts';
import type { Register } from './register.ts';

/** Something that was done with an instrument: a reading taken, a joint tightened. */
export interface Use {
  /** Id of the event. */
  readonly id: string;
  readonly at: string;
  readonly by: string;
  readonly instrument: string;
  /** What the instrument was set in, and that in turn, with the moment of the setting. */
  readonly masters: readonly { readonly name: string; readonly at: string }[];
  /** In words: `main bearing 2, journal diameter, front, vertical`. */
  readonly where: string;
  readonly typed?: Typed;
}

/** A job by what was done in it with instruments, oldest first. */
export interface JobUses {
  readonly job: string;
  readonly number: string;
  readonly engine: string;
  readonly uses: readonly Use[];
}

export interface UseInQuestion extends Use {
  /** Why, in words, each. */
  readonly because: readonly string[];
  /** Done again at the same place since, with nothing against it. */
  readonly doneAgain: boolean;
}

export interface JobInQuestion {
  readonly job: string;
  readonly number: string;
  readonly engine: string;
  readonly uses: readonly UseInQuestion[];
}

export interface InstrumentInQuestion {
  readonly instrument: string;
  /** Those in which something was done. */
  readonly spans: readonly Span[];
  /** Never empty. */
  readonly jobs: readonly JobInQuestion[];
}

type Spans = ReadonlyMap<string, readonly Span[]>;

/** One operation may have been done with one of two wrenches. */
const keyOf = ({ id, instrument }: Use): string => `${id} ${instrument}`;

const saysOf = (name: string, spans: readonly Span[] | undefined, at: string): readonly string[] =>
  (spans ?? []).filter((span) => within(span, at)).map(({ says }) => `${name} ${says}`);

/** Why a use is in question, whichever instrument it is for; none where it is not. */
const because = (use: Use, spans: Spans): readonly string[] => [
  ...saysOf(use.instrument, spans.get(use.instrument), use.at),
  ...use.masters.flatMap(({ name, at }) => saysOf(name, spans.get(name), at)),
];

/** For one instrument: itself, and what was set in it. */
const concerns = (use: Use, name: string, spans: readonly Span[]): boolean =>
  (use.instrument === name && spans.some((span) => within(span, use.at))) ||
  use.masters.some((master) => master.name === name && spans.some((span) => within(span, master.at)));

interface Weighed extends JobUses {
  readonly why: ReadonlyMap<string, readonly string[]>;
  /** The last use with nothing against it, by place. */
  readonly sound: ReadonlyMap<string, number>;
}

const weighed = (job: JobUses, spans: Spans): Weighed => {
  const why = new Map(job.uses.map((use) => [keyOf(use), because(use, spans)]));
  const sound = new Map<string, number>();
  for (const [at, use] of job.uses.entries()) if (why.get(keyOf(use))?.length === 0) sound.set(use.where, at);
  return { ...job, why, sound };
};

const jobInQuestion = (
  { job, number, engine, uses, why, sound }: Weighed,
  name: string,
  spans: readonly Span[],
): JobInQuestion => ({
  job,
  number,
  engine,
  uses: uses.flatMap((use, at) =>
    concerns(use, name, spans)
      ? [{ ...use, because: why.get(keyOf(use)) ?? [], doneAgain: (sound.get(use.where) ?? -1) > at }]
      : [],
  ),
});

/**
 * Every use in question, by instrument, job and time.
 *
 * In question is what was done since an instrument was last known to be good and before it was again, where a check
 * or a calibration found it out of tolerance, and what was done after its due day, unless a later calibration found it
 * good. An instrument that was set in one that is in question is in question with it.
 *
 * @param jobs  what was done in each, as their journals tell
 * @returns instruments by name, those alone of which a use is in question
 */
export const inQuestion = (register: Register, jobs: readonly JobUses[]): readonly InstrumentInQuestion[] => {
  const spans: Spans = new Map(
    [...register.instruments].map(([name, registered]) => [name, doubtfulSpans(registered)]),
  );
  const all = jobs.map((job) => weighed(job, spans));
  return [...spans]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([instrument, of]) => {
      const found = all
        .map((job) => jobInQuestion(job, instrument, of))
        .filter(({ uses }) => uses.length > 0);
      const uses = found.flatMap((job) => job.uses);
      const spoken = of.filter((span) => uses.some((use) => concerns(use, instrument, [span])));
      return found.length === 0 ? [] : [{ instrument, spans: spoken, jobs: found }];
    });
};
