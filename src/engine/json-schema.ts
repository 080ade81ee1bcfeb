/** @module The JSON Schema of the engine type file, for editors and for messages that name what is allowed. */
import { z } from 'zod';
import { engineFile } from './engine-file.ts';

/** The part of JSON Schema (draft 2020-12) that an engine type needs. */
export interface SchemaNode {
  readonly $id?: string;
  readonly title?: string;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, SchemaNode>>;
  readonly type?: string;
  readonly description?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode | boolean;
  readonly items?: SchemaNode | boolean;
  readonly prefixItems?: readonly SchemaNode[];
  readonly anyOf?: readonly SchemaNode[];
  readonly oneOf?: readonly SchemaNode[];
}

/** The published schema, made from the same source as the types and the validation. */
export const engineSchema = (): SchemaNode => {
  const made = z.toJSONSchema(engineFile, { io: 'input' });
  return { ...made, $id: 'endfloat-engine-type-1', title: 'Endfloat engine type 1' } as SchemaNode;
};
