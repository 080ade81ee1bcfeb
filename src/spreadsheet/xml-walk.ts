/** @module A part of a workbook walked through, element by element. Entities of the document's own are not resolved. */
/// <reference path="./saxen.d.ts" />
import { Parser } from 'saxen';

export interface XmlSteps {
  readonly open?: (name: string, attribute: (name: string) => string | undefined) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
}

/** Names without their prefix: whether a writer calls it `c` or `x:c` is its own affair. */
const bare = (name: string): string => name.slice(name.indexOf(':') + 1);

/** @returns whether it is well-formed */
export const walkXml = (bytes: Uint8Array, { open, close, text }: XmlSteps): boolean => {
  const parser = new Parser();
  let sound = true;
  parser.on('error', () => {
    sound = false;
  });
  parser.on('openTag', (name, attributes, decode) => {
    open?.(bare(name), (asked) => {
      const all = attributes();
      const key = Object.keys(all).find((one) => one === asked || one.endsWith(`:${asked}`));
      const value = key === undefined ? undefined : all[key];
      return value === undefined ? undefined : decode(value);
    });
  });
  parser.on('closeTag', (name) => close?.(bare(name)));
  parser.on('text', (words, decode) => text?.(decode(words)));
  parser.on('cdata', (words) => text?.(words));
  parser.parse(new TextDecoder().decode(bytes));
  return sound;
};
