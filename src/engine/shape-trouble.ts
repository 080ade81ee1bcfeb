/** @module A mistake in the shape of an engine type file, in words for the person who typed it. */
import type { z } from 'zod';
import { type FigureKind, figureKindAt } from './figure-field.ts';
import type { FilePath } from './file-path.ts';
import type { Finding } from './finding.ts';
import { engineSchema, type SchemaNode } from './json-schema.ts';
import { missingWords } from './missing-words.ts';
import { chooseName, nearestName } from './nearest-name.ts';

type Issue = z.core.$ZodIssue;

/** What stands at a path of the file, undefined where nothing does. */
const valueAt = (value: unknown, path: FilePath): unknown => {
  let found = value;
  for (const key of path) {
    if (typeof found !== 'object' || found === null) return undefined;
    found = Object.hasOwn(found, key) ? (found as Record<string | number, unknown>)[key] : undefined;
  }
  return found;
};

const top = engineSchema();

const resolved = (schema: SchemaNode | boolean | undefined): SchemaNode | undefined => {
  if (typeof schema !== 'object') return undefined;
  const name = schema.$ref?.replace('#/$defs/', '');
  return name === undefined ? schema : top.$defs?.[name];
};

/** The schema of what stands at a path; where it may be one of several, the one whose `kind` the file names. */
const schemaAt = (path: FilePath, file: unknown): SchemaNode | undefined => {
  let schema: SchemaNode | undefined = top;
  for (const [index, key] of path.entries()) {
    const inside: SchemaNode | boolean | undefined =
      typeof key === 'number'
        ? (schema?.prefixItems?.[key] ?? schema?.items)
        : (schema?.properties?.[key] ?? schema?.additionalProperties);
    schema = resolved(inside);
    const kind = valueAt(file, [...path.slice(0, index + 1), 'kind']);
    schema = schema?.oneOf?.find((option) => option.properties?.kind?.const === kind) ?? schema;
  }
  return schema;
};

const kindWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'keys with values',
  record: 'names with what belongs to them',
};

const valueWords = (value: unknown): string => {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'keys with values';
  return typeof value === 'string' ? `'${value.slice(0, 40)}'` : String(value);
};

const examples: Readonly<Record<FigureKind, string>> = {
  length: 'mm',
  time: 'h',
  torque: 'N·m',
  'angle-per-length': 'deg/mm',
  'length-per-angle': 'mm/deg',
  angle: 'deg',
  force: 'N',
  pressure: 'bar',
  mass: 'g',
  speed: 'rpm',
  ratio: '%',
  temperature: '°C',
  'volume-per-time': 'L/min',
};

const wrongKind = (
  path: FilePath,
  value: unknown,
  expected: string,
  hint: string,
  file: unknown,
): Finding => {
  const figure = figureKindAt(path, valueAt(file, [...path.slice(0, 2), 'quantity']));
  const key = path.at(-1);
  if (value === undefined) {
    const missing = typeof key === 'number' ? `no. ${key + 1} of the list` : key;
    const wanted =
      figure === undefined ? kindWords[expected] : `a figure with its unit, such as ${examples[figure]}`;
    const remedy = `give ${wanted ?? expected}${hint === '' ? '' : ` (${hint})`}`;
    return { weight: 'error', path, what: `${missing ?? 'everything'} is missing`, remedy };
  }
  if (figure !== undefined && typeof value === 'number') {
    const remedy = `say the unit, for example \`${value} ${examples[figure]}\``;
    return { weight: 'error', path, what: `${value} stands without a unit`, remedy };
  }
  if (expected === 'string' && (typeof value === 'number' || typeof value === 'boolean')) {
    const remedy = `put it in quotes: '${value}', with the digits as they should be kept`;
    return { weight: 'error', path, what: `${value} is read as a number, and text is wanted`, remedy };
  }
  const wanted = kindWords[expected] ?? expected;
  return {
    weight: 'error',
    path,
    what: `${valueWords(value)} stands where ${wanted} belongs`,
    remedy: `give ${wanted}`,
  };
};

const badValue = (path: FilePath, value: unknown, allowed: readonly unknown[]): Finding => {
  const names = allowed.map(String);
  if (value === undefined) {
    const what = `${path.at(-1)} is missing`;
    return { weight: 'error', path, what, remedy: `give one of ${names.join(', ')}` };
  }
  const nearest = typeof value === 'string' ? nearestName(value, names) : undefined;
  const remedy =
    names.length === 1
      ? `write ${names[0]}`
      : `write ${nearest === undefined ? '' : `${nearest}, or another `}one of ${names.join(', ')}`.replace(
          'another one',
          'another',
        );
  return { weight: 'error', path, what: `${valueWords(value)} is not one of the words allowed here`, remedy };
};

const unknownKeys = (path: FilePath, keys: readonly string[], file: unknown): readonly Finding[] => {
  const allowed = Object.keys(schemaAt(path, file)?.properties ?? {});
  return keys.slice(0, 20).map((key) => ({
    weight: 'error' as const,
    path: [...path, key],
    of: 'key' as const,
    what: `the key ${key.slice(0, 64)} is not known here`,
    remedy: chooseName(key, allowed),
  }));
};

const sizeWords = (issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): string => {
  const most = issue.code === 'too_big';
  const bound = String(most ? issue.maximum : issue.minimum);
  const limit = `at ${most ? 'most' : 'least'} ${bound}`;
  if (issue.origin === 'array') return `${limit} in the list`;
  if (issue.origin === 'string') return `${limit} characters`;
  return limit;
};

/** Of the forms that an expression may take, the one that the file tried: the one without a strange key. */
const nearestForm = (errors: readonly (readonly Issue[])[], value: unknown): readonly Issue[] | undefined =>
  typeof value === 'object' && value !== null
    ? errors.find((form) => !form.some(({ code, path }) => code === 'unrecognized_keys' || path.length === 0))
    : undefined;

/** Where an input of a sum comes from, in no form that there is. */
const badSource = (path: FilePath, value: unknown, file: unknown): Finding =>
  typeof value === 'number'
    ? wrongKind(path, value, 'string', '', file)
    : {
        weight: 'error',
        path,
        what: `${valueWords(value)} gives nothing to a sum`,
        remedy:
          'give a figure with its unit, or one of characteristic, limit, engine, fastener, list, pumps, instrument, sum, shared-by',
      };

/** A mistake in shape, as findings that say what to do. */
export const shapeFindings = (issue: Issue, file: unknown, around: FilePath = []): readonly Finding[] => {
  const path = [...around, ...(issue.path as FilePath)];
  const value = valueAt(file, path);
  const missing = value === undefined ? missingWords(path) : undefined;
  if (missing !== undefined) return [{ weight: 'error', path, ...missing }];
  switch (issue.code) {
    case 'invalid_type':
      return [wrongKind(path, value, issue.expected, schemaAt(path, file)?.description ?? '', file)];
    case 'invalid_value':
      return [badValue(path, value, issue.values)];
    case 'unrecognized_keys':
      return unknownKeys(path, issue.keys, file);
    case 'too_small':
    case 'too_big': {
      const what = Array.isArray(value)
        ? 'the list has the wrong length'
        : `${valueWords(value)} is out of range`;
      return [{ weight: 'error', path, what, remedy: `give ${sizeWords(issue)}` }];
    }
    case 'invalid_format':
      return [
        {
          weight: 'error',
          path,
          what: `${valueWords(value)} is not written as it must be`,
          remedy: issue.message,
        },
      ];
    case 'invalid_key':
      return [
        {
          weight: 'error',
          path,
          of: 'key',
          what: `'${String(path.at(-1)).slice(0, 64)}' is not a name`,
          remedy: issue.issues[0]?.message ?? 'use small letters, digits and hyphens',
        },
      ];
    case 'invalid_union': {
      if (issue.errors.length === 0) {
        return [badValue(path, value, (issue as { options?: readonly unknown[] }).options ?? [])];
      }
      const form = nearestForm(issue.errors, value);
      if (form !== undefined) return form.flatMap((inner) => shapeFindings(inner, file, path));
      if (path.includes('given')) return [badSource(path, value, file)];
      const remedy =
        'give a name, or one of least, greatest, mean, range-over-axes, range-over-planes, range-over-places, range-over-neighbours, difference, sum, factor';
      return [{ weight: 'error', path, what: `${valueWords(value)} cannot be computed`, remedy }];
    }
    default:
      return [
        { weight: 'error', path, what: `${valueWords(value)} cannot be used here`, remedy: issue.message },
      ];
  }
};
