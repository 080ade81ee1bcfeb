/** @module What a cell's number format says: how many decimals are shown, or that it is a date. */

export type NumberFormat =
  | {
      readonly kind: 'number' /** Decimals always shown; missing in the general format. */;
      readonly decimals?: number;
    }
  | { readonly kind: 'date' }
  | { readonly kind: 'percent' };

// source: ECMA-376, Part 1, 18.8.30, the formats that need no definition of their own
const builtIn: Readonly<Record<number, NumberFormat>> = {
  1: { kind: 'number', decimals: 0 },
  2: { kind: 'number', decimals: 2 },
  3: { kind: 'number', decimals: 0 },
  4: { kind: 'number', decimals: 2 },
  9: { kind: 'percent' },
  10: { kind: 'percent' },
  37: { kind: 'number', decimals: 0 },
  38: { kind: 'number', decimals: 0 },
  39: { kind: 'number', decimals: 2 },
  40: { kind: 'number', decimals: 2 },
};

const isBuiltInDate = (id: number): boolean =>
  (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58);

/** The format of positive numbers, without texts in quotes, escaped signs and colours. */
const bareFormat = (code: string): string =>
  code.replace(/"[^"]*"?|\\.|_.|\*.|\[[^\]]*\]/g, '').split(';', 1)[0] ?? '';

export const formatOf = (id: number, code: string | undefined): NumberFormat => {
  if (code === undefined) return isBuiltInDate(id) ? { kind: 'date' } : (builtIn[id] ?? { kind: 'number' });
  const bare = bareFormat(code);
  if (/general/i.test(bare) || bare.includes('@') || bare.includes('/')) return fractionOrDate(bare);
  if (bare.includes('%')) return { kind: 'percent' };
  if (/[dmyhs]/i.test(bare)) return { kind: 'date' };
  const decimals = /\.(0*)/.exec(bare)?.[1]?.length ?? 0;
  return /e[+-]/i.test(bare) ? { kind: 'number' } : { kind: 'number', decimals };
};

/** `# ??/??` shows fractions of an inch, `dd/mm/yy` a date. */
const fractionOrDate = (bare: string): NumberFormat =>
  /[dmyhs]/i.test(bare.replace(/general/gi, '')) ? { kind: 'date' } : { kind: 'number' };
