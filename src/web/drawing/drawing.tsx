/** @module Shows a drawing from its tree; its places become buttons where something can be done with them. */
import { createElement, type KeyboardEvent, memo, type ReactNode, useRef, useState } from 'react';
import type { SvgNode } from '../../drawing/svg.ts';

/** React spells presentation attributes in one word; those with `aria-` and `data-` keep their hyphens. */
const spelled = (name: string): string =>
  name.startsWith('aria-') || name.startsWith('data-')
    ? name
    : name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

const attributesOf = (node: SvgNode): Record<string, string | number> =>
  Object.fromEntries(Object.entries(node.attributes).map(([name, value]) => [spelled(name), value]));

const shown = (node: SvgNode | string, key: number, place: (node: SvgNode) => object): ReactNode => {
  if (typeof node === 'string') return node;
  const own = typeof node.attributes['data-place'] === 'string' ? place(node) : {};
  return createElement(
    node.tag,
    { ...attributesOf(node), ...own, key },
    ...node.children.map((child, at) => shown(child, at, place)),
  );
};

export interface DrawingProps {
  readonly drawing: SvgNode;
  readonly className?: string;
  /** What choosing a place does; without it the drawing is a picture. */
  readonly onPlace?: (place: string) => void;
  readonly at?: string | undefined;
}

const placesIn = (node: SvgNode | string): readonly string[] => {
  if (typeof node === 'string') return [];
  const own = node.attributes['data-place'];
  return typeof own === 'string' ? [own] : node.children.flatMap(placesIn);
};

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** One stop for the Tab key; arrows go from place to place, Enter chooses. */
export const Drawing = memo(({ drawing, className, onPlace, at }: DrawingProps) => {
  const root = useRef<HTMLDivElement>(null);
  const places = onPlace ? placesIn(drawing) : [];
  const [stop, setStop] = useState<string>();
  const tabStop = stop !== undefined && places.includes(stop) ? stop : (at ?? places[0]);

  const step = (event: KeyboardEvent, from: string) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      onPlace?.(from);
      return;
    }
    const move = steps[event.key];
    if (move === undefined) return;
    event.preventDefault();
    const next = places[(places.indexOf(from) + move + places.length) % places.length];
    if (next === undefined) return;
    setStop(next);
    root.current?.querySelector<SVGGElement>(`[data-place="${CSS.escape(next)}"]`)?.focus();
  };

  const button = (node: SvgNode): object => {
    const place = String(node.attributes['data-place']);
    if (!onPlace) return {};
    return {
      role: 'button',
      tabIndex: place === tabStop ? 0 : -1,
      'aria-current': place === at ? 'location' : undefined,
      onClick: () => onPlace(place),
      onFocus: () => setStop(place),
      onKeyDown: (event: KeyboardEvent) => step(event, place),
    };
  };

  const tree: SvgNode = onPlace
    ? { ...drawing, attributes: { ...drawing.attributes, role: 'group' } }
    : drawing;
  return (
    <div ref={root} className={`drawing ${className ?? ''}`}>
      {shown(tree, 0, button)}
    </div>
  );
});
