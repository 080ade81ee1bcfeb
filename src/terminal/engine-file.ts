/** @module An engine type file named on the command line: its text, the type it gives, and what is wrong in it. */
import type { EngineType } from '../engine/engine-type.ts';
import type { Trouble } from '../engine/trouble.ts';
import { readCheckedType } from '../job/sum/checked-engine-type.ts';
import { type Answer, answer, refusalText } from '../quantity/refusal.ts';
import type { Outcome } from './command.ts';
import { bytesOf } from './input-file.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

export interface EngineOnFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly engine?: EngineType;
  readonly troubles: readonly Trouble[];
}

export const engineOnFile = async (path: string, world: World): Promise<Answer<EngineOnFile>> => {
  const bytes = await bytesOf(path, world);
  if (bytes.kind === 'refused') return bytes;
  const { engine, troubles } = readCheckedType(bytes.value);
  return answer({ path, bytes: bytes.value, troubles, ...(engine && { engine }) });
};

/** `pump.yaml:12:5: error: what (where): remedy`, as editors and build tools read it. */
export const troubleLine = (path: string, trouble: Trouble): string =>
  plain(`${path}:${trouble.line}:${trouble.column}: ${trouble.weight}: ${refusalText(trouble)}`);

/** The answer of every command that was given an engine type file with errors in it. */
export const notUsable = ({ path, troubles }: EngineOnFile): Outcome => ({
  text: '',
  json: { usable: false, troubles },
  warnings: [
    ...troubles.filter(({ weight }) => weight === 'error').map((trouble) => troubleLine(path, trouble)),
    `endfloat: the engine type has errors (${plain(path)}): mend them and look again with endfloat check`,
  ],
  no: true,
});
