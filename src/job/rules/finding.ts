/** @module May this finding, or the size at which a component was found, be noted? */
import type { EngineType } from '../../engine/engine-type.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, orList, type Trouble, trouble } from '../../journal/trouble.ts';
import { type NotedSize, placesOfComponent } from '../../measure/fitted-size.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';

const noComponent = (engine: EngineType, name: string): Trouble =>
  engine.components.has(name)
    ? undefined
    : trouble(
        `${engine.title} has no component “${name}”`,
        'component',
        chooseName(name, engine.components.keys()),
      );

/** Whether a component may stand at a size, at one of its places where one is named. */
export const sizeTrouble = (engine: EngineType, { component: name, place, size }: NotedSize): Trouble => {
  const missing = noComponent(engine, name);
  const component = engine.components.get(name);
  if (missing !== undefined || component === undefined) return missing;
  const places = placesOfComponent(engine, component);
  if (place !== undefined && !places.includes(place))
    return trouble(`${component.title} are not found at “${place}”`, 'size', chooseName(place, places));
  const names = ['standard', ...(component.sizes?.steps ?? []).map((step) => step.name)];
  return names.includes(size)
    ? undefined
    : trouble(`there is no size “${size}”`, component.title, `choose ${orList(names)}`);
};

export const noteSizeTrouble = ({ sheet }: OpenJob, asked: RequestOf<'note size found'>): Trouble =>
  sizeTrouble(sheet.engine, asked);

/** A figure and its scale: Rockwell, Brinell, Vickers (ISO 6508, 6506, 6507) or the scleroscope's. */
const hardnessForm = /^\d{1,4}([.,]\d{1,2})? ?(HR[A-K]|HR(15|30|45)[NT]W?|HBW?|HV|HS)[\d./]{0,12}$/;

export const noteFindingTrouble = ({ sheet }: OpenJob, asked: RequestOf<'note finding'>): Trouble => {
  const { engine } = sheet;
  const missing = noComponent(engine, asked.component);
  if (missing !== undefined) return missing;
  const component = engine.components.get(asked.component);
  const places = component ? placesOfComponent(engine, component) : [];
  if (!places.includes(asked.place))
    return trouble(
      `${component?.title ?? asked.component} is not found at “${asked.place}”`,
      'finding',
      chooseName(asked.place, places),
    );
  const where = `finding, ${asked.place}`;
  if (asked.finding === 'sound' && asked.crackTest?.showed === 'a crack')
    return trouble(
      'the crack test showed a crack, and the part is noted as sound',
      where,
      'note it as cracked, or look at the test again',
    );
  if (asked.hardness !== undefined && !hardnessForm.test(asked.hardness.trim()))
    return trouble(
      `“${asked.hardness}” is no hardness`,
      where,
      'write the figure and its scale, for example 52 HRC, 210 HB or 540 HV',
    );
  // A fault without words is no use to whoever decides; a sound part needs none.
  return asked.finding === 'sound'
    ? undefined
    : blank(asked.says, where, 'write what you saw, where and how deep');
};
