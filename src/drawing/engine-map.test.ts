/** @module Checks of the engine's map: every place drawn, named, apart from its neighbours, on the sheet. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { EngineType, Place, PlaceKind } from '../engine/engine-type.ts';
import { readEngineType } from '../engine/read-engine-type.ts';
import { engineLayout } from './engine-layout.ts';
import { engineMap } from './engine-map.ts';
import type { Box } from './ink.ts';
import type { MapWay, OffStanding } from './map-way.ts';
import { type Mark, marks } from './mark.ts';
import { type SvgNode, svgText } from './svg.ts';

const demo = (file: string): EngineType => {
  const { engine } = readEngineType(readFileSync(new URL(`../../demo/engines/${file}`, import.meta.url)));
  if (!engine) throw new Error(`${file} does not read`);
  return engine;
};

/** The same make with other cylinders: only what the drawing looks at is changed. */
const grown = (engine: EngineType, cylinders: number, layout: EngineType['layout']): EngineType => {
  const throws = layout === 'vee' ? cylinders / 2 : cylinders;
  const count = (kind: PlaceKind): number => {
    if (kind.along === 'bearing') return throws + 1;
    return kind.along === 'cylinder' ? (kind.count / engine.cylinders) * cylinders : kind.count;
  };
  const placeKinds = new Map(
    [...engine.placeKinds].map(([name, kind]) => [name, { ...kind, count: count(kind) }] as const),
  );
  const places = new Map<string, Place>();
  for (const kind of placeKinds.values())
    for (let number = 1; number <= kind.count; number += 1) {
      const id = `${kind.name}.${number}`;
      places.set(id, { id, kind: kind.name, number, title: `${kind.title} ${number}` });
    }
  const firingOrder = Array.from({ length: cylinders }, (_, at) => at + 1);
  return { ...engine, cylinders, layout, firingOrder, placeKinds, places };
};

const three = demo('quillfeather-3w.yaml');
const engines: readonly (readonly [string, EngineType])[] = [
  ['one cylinder', demo('mudlark-1.yaml')],
  ['three in line', three],
  ['eight in line', grown(three, 8, 'in line')],
  ['twelve in vee', grown(three, 12, 'vee')],
];

const placesIn = (node: SvgNode | string): readonly SvgNode[] => {
  if (typeof node === 'string') return [];
  return 'data-place' in node.attributes ? [node] : node.children.flatMap(placesIn);
};

const measuredPlaces = (engine: EngineType): readonly string[] => {
  const kinds = new Set([...engine.characteristics.values()].map(({ at }) => at));
  return [...engine.places.values()].filter(({ kind }) => kinds.has(kind)).map(({ id }) => id);
};

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - 0.01 &&
  b.x < a.x + a.width - 0.01 &&
  a.y < b.y + b.height - 0.01 &&
  b.y < a.y + a.height - 0.01;

describe.each(engines)('the map of an engine with %s', (_, engine) => {
  const layout = engineLayout(engine);

  it('gives every place a stand on the sheet', () => {
    expect([...layout.places.keys()].sort()).toEqual([...engine.places.keys()].sort());
    for (const box of layout.places.values()) {
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.y).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(layout.width);
      expect(box.y + box.height).toBeLessThanOrEqual(layout.height);
      expect(box.width).toBeGreaterThan(8);
    }
  });

  it('stands no place on another of its kind', () => {
    for (const kind of engine.placeKinds.values()) {
      const boxes = [...engine.places.values()]
        .filter((place) => place.kind === kind.name)
        .flatMap(({ id }) => layout.places.get(id) ?? []);
      for (const [at, box] of boxes.entries())
        for (const other of boxes.slice(at + 1)) expect(overlap(box, other), kind.name).toBe(false);
    }
  });

  it('draws every place once, with its name and in words its mark, or that nothing is measured there', () => {
    const drawn = placesIn(engineMap(engine, new Map([['bore.1', 'outside']])));
    expect(drawn.map(({ attributes }) => attributes['data-place']).sort()).toEqual(
      [...engine.places.keys()].sort(),
    );
    const measured = measuredPlaces(engine);
    for (const { attributes } of drawn) {
      const place = engine.places.get(String(attributes['data-place']));
      const mark = place?.id === 'bore.1' ? 'outside' : 'nothing yet';
      const says = measured.includes(place?.id ?? '') ? mark : 'nothing is measured here';
      expect(attributes['aria-label']).toBe(`${place?.title}: ${says}`);
    }
  });
});

describe('the marks of the map', () => {
  it('are each drawn in a way of their own, and named in the legend', () => {
    const only = (mark: Mark) => {
      const drawn = placesIn(engineMap(three, new Map([['piston.1', mark]])));
      const piston = drawn.find(({ attributes }) => attributes['data-place'] === 'piston.1');
      // Colours are taken out: what is left must still tell the marks apart.
      return svgText({ tag: 'g', attributes: {}, children: piston?.children.slice(1) ?? [] }).replace(
        /#[0-9a-f]{6}/g,
        '',
      );
    };
    expect(new Set(marks.map(only)).size).toBe(marks.length);
    const text = svgText(engineMap(three, new Map([['piston.1', 'not opened']])));
    for (const mark of marks) expect(text).toContain(`>${mark}</text>`);
  });

  it('stand in the legend each clear of the next, in as many lines as a narrow engine needs', () => {
    for (const engine of [three, demo('mudlark-1.yaml')]) {
      const text = svgText(engineMap(engine, new Map([['piston.1', 'not opened']])));
      const width = Number(/viewBox="0 0 ([\d.]+)/.exec(text)?.[1]);
      const words = marks.map((mark) => {
        const [, x, y] = new RegExp(`<text x="([\\d.]+)" y="([\\d.]+)"[^>]*>${mark}</text>`).exec(text) ?? [];
        // A capital of this lettering is about half as wide as the lettering is high.
        return { from: Number(x) - 36, to: Number(x) + mark.length * 8, y: Number(y) };
      });
      for (const [at, { to, y }] of words.entries()) {
        const next = words[at + 1];
        expect(to).toBeLessThanOrEqual(next?.y === y ? next.from : width);
      }
    }
  });

  it('have nothing that is not opened in the legend where all of the engine is', () => {
    const text = svgText(engineMap(three, new Map()));
    expect(text).not.toContain('not opened');
    for (const mark of marks.slice(1)) expect(text).toContain(`>${mark}</text>`);
  });

  it('are counted in the description', () => {
    const text = svgText(
      engineMap(
        three,
        new Map([
          ['bore.1', 'within'],
          ['bore.2', 'within'],
        ]),
      ),
    );
    expect(text).toContain('2 within');
  });

  it('stand in one order of firing: with 1-3-2 no two pistons are at the top together', () => {
    const { throws } = engineLayout(three);
    // source: three throws 120° apart: cos 0°, cos 240°, cos 480°
    const [top = 0, ...others] = throws.map(({ pin }) => pin);
    for (const pin of others) expect(pin / top).toBeCloseTo(-0.5, 6);
  });
});

describe('the way to a place on the map', () => {
  const way: MapWay = {
    to: 'main bearing 2',
    signs: new Map([
      ['pump.1', { step: 5, standing: 'off' }],
      ['head.1', { step: 7, standing: 'now' }],
      ['piston.2', { step: 9, standing: 'later' }],
    ]),
  };

  it('tells at every place on it, in words and by a flag, when it comes off', () => {
    const map = engineMap(three, new Map(), 'main.2', way);
    const label = (id: string) =>
      String(
        placesIn(map).find(({ attributes }) => attributes['data-place'] === id)?.attributes['aria-label'],
      );
    expect(label('pump.1')).toBe('fuel pump 1: nothing yet; came off at step 5');
    expect(label('head.1')).toContain('; comes off at step 7, which can be done now');
    expect(label('piston.2')).toContain('; comes off at step 9, later');
    expect(label('piston.1')).toBe('piston 1: nothing yet');
    expect(svgText(map)).toContain('the way to main bearing 2');
  });

  it('is drawn apart from what is off and what comes later without its colours', () => {
    const drawn = (standing: OffStanding) => {
      const map = engineMap(three, new Map(), undefined, {
        to: 'piston 2',
        signs: new Map([['piston.2', { step: 9, standing }]]),
      });
      const flags = map.children.filter((one) => typeof one !== 'string' && 'data-way' in one.attributes);
      expect(flags).toHaveLength(1);
      return flags
        .map(svgText)
        .join('')
        .replace(/#[0-9a-f]{6}|data-way="[^"]*"/g, '');
    };
    expect(new Set((['off', 'now', 'later'] as const).map(drawn)).size).toBe(3);
  });
});
