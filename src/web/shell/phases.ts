/** @module The seven sheets of a job in the trade's order: their addresses and what each is for. */

export interface PhaseSheet {
  readonly slug: string;
  readonly name: string;
  /** What is done there, for the list of jobs. */
  readonly next: string;
}

const phaseSheets: readonly PhaseSheet[] = [
  { slug: 'book-in', name: 'Book in', next: 'look over what was booked' },
  { slug: 'strip', name: 'Strip', next: 'take it apart, note what is found' },
  { slug: 'measure', name: 'Measure', next: 'read what is still missing' },
  { slug: 'decide', name: 'Decide', next: 'choose a plan and have the owner agree' },
  { slug: 'build', name: 'Build', next: 'fit the shim packs, prove the hold points' },
  { slug: 'run', name: 'Run', next: 'log the run-in' },
  { slug: 'hand-over', name: 'Hand over', next: 'print the record' },
];

const first = phaseSheets[0] ?? { slug: '', name: '', next: '' };

export const phaseNamed = (name: string): PhaseSheet =>
  phaseSheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()) ?? first;

export const phaseAt = (slug: string): PhaseSheet | undefined =>
  phaseSheets.find((sheet) => sheet.slug === slug);

export const addressOf = (job: string, slug: string): string => `/jobs/${encodeURIComponent(job)}/${slug}`;
