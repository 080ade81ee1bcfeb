/** @module The file with which a new engine type begins: the places that every such engine has, and nothing measured yet. */

import { fileData } from './edit-engine.ts';
import { withValue } from './file-data.ts';
import { rewriteFile } from './rewrite-file.ts';

export interface NewEngine {
  /** Small letters, digits and hyphens. */
  readonly id: string;
  readonly title: string;
  /** The manual: number, edition. */
  readonly source: string;
  readonly cylinders: number;
  readonly by: string;
  /** ISO 8601 date. */
  readonly on: string;
}

const frame = `format: endfloat engine type 1
id: new
title: New
version: 1
source: the manual
entered: { by: somebody, on: '2000-01-01' }

cylinders: 1
layout: in line
stroke: 100 mm
rod: 200 mm
pin-offset: 0 mm
firing-order: [1]

places:
  main: { title: main bearing, count: 2, along: bearing, drawn: main }
  thrust: { title: thrust bearing, count: 1, along: engine, drawn: thrust }
  big-end: { title: big end, count: 1, along: cylinder, drawn: big-end }
  bore: { title: cylinder bore, count: 1, along: cylinder, drawn: bore }
  piston: { title: piston, count: 1, along: cylinder, drawn: piston }
  head: { title: cylinder head, count: 1, along: engine, drawn: head }

# In the order in which hands take them.
characteristics: {}

components: {}

offers: []
`;

/** In line, 1 to 20 cylinders; stroke, rod and firing order are there to be looked up and typed over. */
export const blankEngineType = ({ id, title, source, cylinders, by, on }: NewEngine): string => {
  const file = fileData(frame);
  if (file.kind === 'refused') throw new Error('the frame of a new engine type cannot be read');
  const values: readonly (readonly [readonly string[], unknown])[] = [
    [['id'], id],
    [['title'], title],
    [['source'], source],
    [['entered'], { by, on }],
    [['cylinders'], cylinders],
    [['firing-order'], Array.from({ length: cylinders }, (_, at) => at + 1)],
    [['places', 'main', 'count'], cylinders + 1],
    ...['big-end', 'bore', 'piston'].map((kind) => [['places', kind, 'count'], cylinders] as const),
  ];
  const data = values.reduce<unknown>(
    (before, [path, value]) => withValue(before, path, value),
    file.value.data,
  );
  return rewriteFile(frame, data);
};
