/** @module Reading an engine type file: from text or bytes to an engine type, or to troubles with line and column. */
import { compileEngine } from './compile-engine.ts';
import { engineFile } from './engine-file.ts';
import type { EngineType } from './engine-type.ts';
import { type FileDocument, readDocument } from './file-document.ts';
import { pathText } from './file-path.ts';
import type { Finding } from './finding.ts';
import { lintEngine, type Rule } from './lint/lint-engine.ts';
import { shapeFindings } from './shape-trouble.ts';
import { sourceText } from './source-text.ts';
import type { Trouble } from './trouble.ts';

export interface EngineReading {
  /** Present when no trouble weighs as an error. */
  readonly engine?: EngineType;
  /** In the order of the file. */
  readonly troubles: readonly Trouble[];
}

/** More than this helps nobody; the rest shows when these are mended. */
const greatestTroubles = 50;

const troublesOf = (document: FileDocument, findings: readonly Finding[]): readonly Trouble[] =>
  findings
    .slice(0, greatestTroubles)
    .map(({ weight, path, of, what, remedy }) => ({
      weight,
      what,
      where: pathText(path),
      remedy,
      ...document.position(path, of ?? 'value'),
    }))
    .sort((a, b) => a.line - b.line || a.column - b.column);

/**
 * Reads an engine type file, YAML or JSON, in UTF-8.
 *
 * Every trouble names line and column, what is wrong and what to do. Files from strangers are safe to
 * hand in: size, depth and count are bounded, and aliases, tags and reserved keys are refused. Never throws.
 *
 * @param rules  beside those of the linter: what takes more than the engine type to tell
 */
export const readEngineType = (source: string | Uint8Array, rules: readonly Rule[] = []): EngineReading => {
  const text = sourceText(source);
  if (text.kind === 'refused') return { troubles: [text.trouble] };
  const { document, troubles } = readDocument(text.text);
  if (document === undefined) return { troubles };
  const file = engineFile.safeParse(document.value);
  if (!file.success) {
    const format = file.error.issues.find(({ path }) => path[0] === 'format');
    // A file of another kind would only be buried in its missing keys.
    if (format !== undefined)
      return { troubles: troublesOf(document, shapeFindings(format, document.value)) };
    const issues = file.error.issues.slice(0, greatestTroubles);
    return {
      troubles: troublesOf(
        document,
        issues.flatMap((issue) => shapeFindings(issue, document.value)),
      ),
    };
  }
  const { engine, findings } = compileEngine(file.data);
  if (engine === undefined) return { troubles: troublesOf(document, findings) };
  const linted = lintEngine(engine, rules);
  const found = troublesOf(document, linted);
  return linted.some(({ weight }) => weight === 'error') ? { troubles: found } : { engine, troubles: found };
};
