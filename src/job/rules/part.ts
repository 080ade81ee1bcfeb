/** @module May this loose part be measured or set aside, and may these parts go to these places? */
import { chooseName } from '../../engine/nearest-name.ts';
import { badFigure, blank, orList, type Trouble, trouble } from '../../journal/trouble.ts';
import { formatFigure } from '../../quantity/figure.ts';
import type { Answer } from '../../quantity/refusal.ts';
import type { RequestOf } from '../command.ts';
import { type ComponentFit, clearanceWith, fittingOf } from '../fitting.ts';
import type { OpenJob } from '../job.ts';
import { measuresOther, notBrought } from './reading.ts';

const troubleOf = <T>(found: Answer<T>): Trouble => (found.kind === 'refused' ? found.refusal : undefined);

const nameTrouble = (part: string): Trouble =>
  part.trim() === part && !/[,;+]/.test(part)
    ? undefined
    : trouble(
        `“${part}” is no name to tell a part by`,
        'part',
        'write what stands on the part, without commas, plus signs and blanks around it',
      );

const halfTrouble = ({ fitting }: ComponentFit, half: string, where: string): Trouble => {
  if (fitting.takes.includes(half)) return undefined;
  const halves = fitting.takes.filter((each) => each !== '');
  return halves.length === 0
    ? trouble('the parts of a place are alike here', where, 'leave the half out')
    : trouble(
        half === '' ? 'which half it is is missing' : `there is no half “${half}” here`,
        where,
        `choose ${orList(halves)}`,
      );
};

export const measurePartTrouble = (job: OpenJob, asked: RequestOf<'measure part'>): Trouble => {
  const found = fittingOf(job, asked.component);
  if (found.kind === 'refused') return troubleOf(found);
  const fit = found.value;
  const where = `${fit.component.title}, part ${asked.part}`;
  const sizes = ['standard', ...(fit.component.sizes?.steps ?? []).map(({ name }) => name)];
  if (!sizes.includes(asked.size))
    return trouble(`there is no size “${asked.size}”`, where, `choose ${orList(sizes)}`);
  const wrong = nameTrouble(asked.part) ?? halfTrouble(fit, asked.half ?? '', where);
  if (wrong !== undefined) return wrong;
  for (const reading of asked.readings) {
    const bad =
      badFigure(reading.typed, 'length', where, { above: 0 }) ??
      badFigure(reading.temperature, 'temperature', `${where}, temperature`) ??
      badFigure(reading.instrumentTemperature, 'temperature', `${where}, temperature of the instrument`) ??
      notBrought(job, reading.instrument, where) ??
      measuresOther(job, reading.instrument, 'length', where);
    if (bad !== undefined) return bad;
  }
  return undefined;
};

const notInStock = (fit: ComponentFit, part: string): Trouble => {
  const names = fit.stock.map(({ name }) => name);
  if (names.includes(part)) return undefined;
  return trouble(
    `no part “${part}” is measured`,
    fit.component.title,
    names.length === 0 ? 'measure the loose parts first' : chooseName(part, names),
  );
};

export const setPartAsideTrouble = (job: OpenJob, asked: RequestOf<'set part aside'>): Trouble => {
  const found = fittingOf(job, asked.component);
  if (found.kind === 'refused') return troubleOf(found);
  return (
    notInStock(found.value, asked.part) ?? blank(asked.why, asked.part, 'write why it is not to be used')
  );
};

/** What is wrong with the parts of one place by themselves. */
const atPlace = (
  job: OpenJob,
  fit: ComponentFit,
  { place, parts }: RequestOf<'assign parts'>['places'][number],
): Trouble => {
  const places = fit.places.map((each) => each.place);
  const here = fit.places.find((each) => each.place === place);
  if (here === undefined)
    return trouble(`${fit.component.title} do not go to “${place}”`, 'parts', chooseName(place, places));
  const { title, limits } = here;
  const { takes } = fit.fitting;
  if (parts.length !== takes.length)
    return trouble(
      `${title} takes ${takes.length === 1 ? 'one part' : 'two parts'}, and ${parts.length} are given`,
      title,
      `name ${takes.length === 1 ? 'one' : 'two'}`,
    );
  for (const [at, part] of parts.entries()) {
    const lacking = notInStock(fit, part);
    if (lacking !== undefined) return lacking;
    const known = fit.stock.find(({ name }) => name === part);
    if (known !== undefined && known.size !== here.size)
      return trouble(
        `${part} is of size ${known.size}, and ${title} takes one of ${here.size}`,
        title,
        `choose a part of size ${here.size}, or note first at which size ${title} stands`,
      );
    if ((known?.half ?? '') !== takes[at])
      return trouble(
        `${part} is not the ${takes[at]} half`,
        title,
        `name them in order: ${takes.join(', ')}`,
      );
  }
  const { verdict, clearance } = clearanceWith(job, fit, here, parts);
  // Unsure may go in: the clearance is measured as fitted before it is covered up.
  if (verdict !== 'outside' || !clearance) return undefined;
  const { least, greatest } = limits;
  return trouble(
    `with ${parts.join(' and ')} the clearance would be ${formatFigure(clearance.value, 3)} mm, outside ${formatFigure(least, 3)} to ${formatFigure(greatest, 3)} mm`,
    title,
    'choose another part',
  );
};

/** Taken by two places after this. */
const twice = (fit: ComponentFit, { places }: RequestOf<'assign parts'>): Trouble => {
  const named = new Set(places.map(({ place }) => place));
  if (named.size < places.length)
    return trouble('a place is named twice', fit.component.title, 'name each place once');
  const others = fit.places.flatMap(({ place, assigned }) =>
    assigned && !named.has(place) ? [{ place, parts: assigned.parts }] : [],
  );
  const at = new Map<string, string>();
  for (const { place, parts } of [...others, ...places])
    for (const part of parts) {
      const other = at.get(part);
      if (other !== undefined)
        return trouble(
          `part ${part} would go to ${other === place ? `${place} twice` : `${other} and to ${place}`}`,
          fit.component.title,
          'give each part to one place',
        );
      at.set(part, place);
    }
  return undefined;
};

export const assignPartsTrouble = (job: OpenJob, asked: RequestOf<'assign parts'>): Trouble => {
  const found = fittingOf(job, asked.component);
  if (found.kind === 'refused') return troubleOf(found);
  for (const one of asked.places) {
    const bad = atPlace(job, found.value, one);
    if (bad !== undefined) return bad;
  }
  return twice(found.value, asked);
};
