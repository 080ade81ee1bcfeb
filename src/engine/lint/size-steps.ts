/** @module Rule: rework steps go one way, the way of wear where metal is taken off, and do not overlap. */
import type { Bounds, Characteristic, Component, EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { millimetres } from './every-limits.ts';

interface Size {
  readonly name: string;
  readonly made: Bounds;
}

const middle = ({ made: { least, greatest } }: Size): number | undefined =>
  least === undefined || greatest === undefined ? undefined : (least + greatest) / 2;

/** Where neighbouring limits as made overlap, a part could be of either size. */
const overlap = (a: Bounds, b: Bounds): boolean =>
  (a.least ?? -Infinity) <= (b.greatest ?? Infinity) && (b.least ?? -Infinity) <= (a.greatest ?? Infinity);

const nameFits = (component: Component, sizes: readonly Size[]): readonly Finding[] => {
  const standard = sizes[0] === undefined ? undefined : middle(sizes[0]);
  return sizes.slice(1).flatMap((size, index) => {
    const says = Number(/\d+\.\d+/.exec(size.name)?.[0]);
    const here = middle(size);
    if (standard === undefined || here === undefined || Number.isNaN(says)) return [];
    const shift = Math.abs(here - standard);
    if (shift < 1e-9 || Math.abs(shift - says) < 0.006 || Math.abs(shift - says * 25.4) < 0.006) return [];
    return [
      doubtful(
        ['components', component.name, 'sizes', 'steps', index, 'limits'],
        `step ${size.name} of ${component.title} lies ${millimetres(shift)} from the size as made`,
        'compare the limits of the step with the manual',
      ),
    ];
  });
};

const oneWay = (
  component: Component,
  of: Characteristic,
  sizes: readonly Size[],
  machined: boolean,
): readonly Finding[] => {
  const middles = sizes.map(middle);
  let way = machined && of.wears !== 'either' ? (of.wears === 'larger' ? 1 : -1) : 0;
  return sizes.slice(1).flatMap((size, index) => {
    const before = middles[index];
    const here = middles[index + 1];
    const previous = sizes[index];
    if (before === undefined || here === undefined || previous === undefined) return [];
    const path = ['components', component.name, 'sizes', 'steps', index, 'limits', 'new'];
    const step = Math.sign(here - before);
    const wasWay = way;
    way = way === 0 ? step : way;
    if (machined && step !== way) {
      const what = `step ${size.name} of ${component.title} would put metal on: ${of.title} wears ${of.wears}`;
      return [wrong(path, what, 'list the steps in the order in which metal is taken off')];
    }
    if (wasWay !== 0 && step !== wasWay) {
      const what = `step ${size.name} of ${component.title} goes back on the step before`;
      return [wrong(path, what, 'list the steps in the order in which they are taken')];
    }
    if (step !== 0 && overlap(previous.made, size.made)) {
      const what = `the limits of step ${size.name} of ${component.title} overlap those of ${previous.name}`;
      return [wrong(path, what, 'compare both with the manual: a part would be of either size')];
    }
    return [];
  });
};

export const sizeSteps = (engine: EngineType): readonly Finding[] =>
  [...engine.components.values()].flatMap((component) => {
    const of = engine.characteristics.get(component.sizes?.of ?? '');
    if (component.sizes === undefined || of === undefined) return [];
    const path = ['components', component.name, 'sizes'];
    if (of.derived !== undefined) {
      return [
        wrong([...path, 'of'], `${of.title} is computed, and cannot be machined`, 'name a measured one'),
      ];
    }
    if (of.limits === undefined) {
      const remedy = `give ${of.name} its limits as made: they are the size called standard`;
      return [wrong([...path, 'of'], `${of.title} has no limits`, remedy)];
    }
    const sizes: readonly Size[] = [
      { name: 'standard', made: of.limits.new },
      ...component.sizes.steps.map(({ name, limits }) => ({ name, made: limits.new })),
    ];
    const machined = engine.offers.some(
      ({ component: name, does }) => name === component.name && does === 'machine',
    );
    return [...oneWay(component, of, sizes, machined), ...nameFits(component, sizes)];
  });
