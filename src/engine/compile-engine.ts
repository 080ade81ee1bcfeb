/** @module An engine type put together from its file: places spelled out, figures in the core's units. */
import { mm } from '../quantity/brand.ts';
import { componentsOf } from './compile-components.ts';
import { fastenerOf } from './compile-fastener.ts';
import { couplingOf, offerOf } from './compile-offers.ts';
import { operationOf } from './compile-operation.ts';
import { oneUseOf } from './compile-orders.ts';
import { runInOf } from './compile-run-in.ts';
import { pumpTimingOf } from './compile-timing.ts';
import { valveSettingOf } from './compile-valve-setting.ts';
import type { EngineFile } from './engine-file.ts';
import type { Characteristic, EngineType, Place, PlaceKind } from './engine-type.ts';
import { readExpression } from './expression.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { Finding } from './finding.ts';
import { given } from './given.ts';
import { readLimits } from './limits.ts';

const bookOf = <From, To>(book: Readonly<Record<string, From>>, make: (name: string, entry: From) => To) =>
  new Map(Object.entries(book).map(([name, entry]) => [name, make(name, entry)]));

const placeKindOf = (name: string, file: EngineFile['places'][string]): PlaceKind => ({
  name,
  title: file.title,
  count: file.count,
  along: file.along,
  drawn: file.drawn,
  ...given('onePart', file['one-part']),
});

const placesOf = ({ name, title, count }: PlaceKind): readonly Place[] =>
  Array.from({ length: count }, (_, index) => ({
    id: `${name}.${index + 1}`,
    kind: name,
    number: index + 1,
    title: count === 1 ? title : `${title} ${index + 1}`,
  }));

const characteristicOf = (
  reader: FigureReader,
  name: string,
  file: EngineFile['characteristics'][string],
): Characteristic => ({
  name,
  title: file.title,
  at: file.at,
  ...given('quantity', file.quantity),
  planes: file.scheme?.planes ?? [''],
  axes: file.scheme?.axes ?? [''],
  wears: file.wears,
  ...given('inBore', file['in-bore']),
  ...given('derived', file.derived === undefined ? undefined : readExpression(file.derived)),
  ...given('instrument', file.instrument),
  ...given('material', file.material),
  ...given(
    'limits',
    file.limits &&
      readLimits(reader, file.limits, file.wears, ['characteristics', name, 'limits'], file.quantity),
  ),
  ...given('source', file.source),
});

export interface Compiled {
  /** Present when every figure could be read. */
  readonly engine?: EngineType;
  readonly findings: readonly Finding[];
}

/** Puts an engine type together. Names are not looked up here: whether they fit is for the linter to say. */
export const compileEngine = (file: EngineFile): Compiled => {
  const reader: FigureReader = { findings: [], pairs: [] };
  const length = (key: 'stroke' | 'rod' | 'pin-offset') =>
    mm(readFigure(reader, file[key], 'length', [key]).amount);
  const placeKinds = bookOf(file.places, placeKindOf);
  const places = [...placeKinds.values()].flatMap(placesOf);
  const engine: EngineType = {
    id: file.id,
    title: file.title,
    version: file.version,
    source: file.source,
    ...given('entered', file.entered),
    ...given('checked', file.checked),
    differs: file.differs,
    cylinders: file.cylinders,
    layout: file.layout,
    stroke: length('stroke'),
    rod: length('rod'),
    pinOffset: length('pin-offset'),
    firingOrder: file['firing-order'],
    placeKinds,
    places: new Map(places.map((place) => [place.id, place])),
    characteristics: bookOf(file.characteristics, (name, entry) => characteristicOf(reader, name, entry)),
    components: componentsOf(reader, file),
    offers: file.offers.map((offer, index) => offerOf(reader, offer, ['offers', index])),
    couplings: file.couplings.map((coupling, index) => couplingOf(reader, coupling, ['couplings', index])),
    oneUse: bookOf(file['one-use'], oneUseOf),
    fasteners: bookOf(file.fasteners, (name, entry) => fastenerOf(reader, name, entry)),
    operations: bookOf(file.operations, (name, entry) => operationOf(reader, name, entry)),
    ...given(
      'pumpTiming',
      file['pump-timing'] && pumpTimingOf(reader, file['pump-timing'], file.characteristics),
    ),
    ...given('runIn', file['run-in'] && runInOf(reader, file['run-in'])),
    ...given('valveSetting', file['valve-setting'] && valveSettingOf(reader, file['valve-setting'])),
    printedPairs: reader.pairs,
  };
  return reader.findings.length > 0 ? { findings: reader.findings } : { engine, findings: [] };
};
