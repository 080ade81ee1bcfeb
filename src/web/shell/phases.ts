/** @module The seven sheets of a job in the trade's order, and their addresses. */

export interface PhaseSheet {
  readonly slug: string;
  readonly name: string;
}

const phaseSheets: readonly PhaseSheet[] = [
  { slug: 'book-in', name: 'Book in' },
  { slug: 'strip', name: 'Strip' },
  { slug: 'measure', name: 'Measure' },
  { slug: 'decide', name: 'Decide' },
  { slug: 'build', name: 'Build' },
  { slug: 'run', name: 'Run' },
  { slug: 'hand-over', name: 'Hand over' },
];

const first = phaseSheets[0] ?? { slug: '', name: '' };

export const phaseNamed = (name: string): PhaseSheet =>
  phaseSheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()) ?? first;

export const phaseAt = (slug: string): PhaseSheet | undefined =>
  phaseSheets.find((sheet) => sheet.slug === slug);

export const addressOf = (job: string, slug: string): string => `/jobs/${encodeURIComponent(job)}/${slug}`;
