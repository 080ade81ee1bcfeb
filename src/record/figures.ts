/** @module The figures of a record that were computed rather than typed, each by a name, as they are shown. */
import type { RecordModel } from './record-model.ts';

export type Figures = Readonly<Record<string, string>>;

/**
 * Every cell and line of the derived sections: `verdicts / main.2 main-clearance / Value`.
 * Rows that share a name are numbered, so that none is lost.
 */
export const figuresOf = (model: RecordModel): Figures => {
  const figures: [string, string][] = [];
  for (const section of model.sections.filter((one) => one.derived)) {
    for (const [at, line] of section.says.entries()) figures.push([`${section.name} / line ${at + 1}`, line]);
    const seen = new Map<string, number>();
    for (const row of section.table?.rows ?? []) {
      const times = (seen.get(row.of) ?? 0) + 1;
      seen.set(row.of, times);
      const name = times === 1 ? row.of : `${row.of} (${times})`;
      for (const [at, cell] of row.cells.entries())
        figures.push([`${section.name} / ${name} / ${section.table?.heads[at] ?? at}`, cell]);
    }
  }
  figures.push(['events', String(model.events)], ['last hash', model.hash]);
  // A plain object would take `__proto__` for something else.
  return Object.fromEntries(figures);
};
