/** @module The parts of a workbook round its sheets: which sheet comes first, the texts kept apart, the number formats. */
import { formatOf, type NumberFormat } from './number-format.ts';
import { walkXml } from './xml-walk.ts';

export interface SheetNamed {
  readonly name: string;
  /** The part that holds it. */
  readonly part: string;
}

export const workbookParts = ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels'] as const;

const targetsOf = (relations: Uint8Array | undefined): ReadonlyMap<string, string> => {
  const targets = new Map<string, string>();
  if (relations)
    walkXml(relations, {
      open: (name, attribute) => {
        if (name === 'Relationship')
          targets.set(attribute('Id') ?? '', (attribute('Target') ?? '').replace(/^\/?(xl\/)?/, 'xl/'));
      },
    });
  return targets;
};

/** Sheets that a person sees, in the order of their tabs. */
export const sheetsOf = (parts: ReadonlyMap<string, Uint8Array>): readonly SheetNamed[] => {
  const [book, relations] = workbookParts;
  const workbook = parts.get(book);
  const targets = targetsOf(parts.get(relations));
  const sheets: SheetNamed[] = [];
  if (workbook)
    walkXml(workbook, {
      open: (name, attribute) => {
        const part = targets.get(attribute('id') ?? '');
        if (name === 'sheet' && part && (attribute('state') ?? 'visible') === 'visible')
          sheets.push({ name: attribute('name') ?? '', part });
      },
    });
  return sheets;
};

/** Texts that cells point to by number. Readings aloud of Japanese words are left out. */
export const sharedTexts = (part: Uint8Array | undefined): readonly string[] => {
  const texts: string[] = [];
  let text = '';
  let inText = false;
  let aloud = 0;
  if (part)
    walkXml(part, {
      open: (name) => {
        if (name === 'si') text = '';
        if (name === 'rPh') aloud += 1;
        inText = name === 't' && aloud === 0;
      },
      text: (words) => {
        if (inText) text += words;
      },
      close: (name) => {
        if (name === 't') inText = false;
        if (name === 'rPh') aloud -= 1;
        if (name === 'si') texts.push(text);
      },
    });
  return texts;
};

/** The number format of each style that cells name by its number. */
export const cellFormats = (part: Uint8Array | undefined): readonly NumberFormat[] => {
  const codes = new Map<number, string>();
  const formats: NumberFormat[] = [];
  let ofCells = false;
  if (part)
    walkXml(part, {
      open: (name, attribute) => {
        if (name === 'numFmt') codes.set(Number(attribute('numFmtId')), attribute('formatCode') ?? '');
        if (name === 'cellXfs') ofCells = true;
        if (name === 'xf' && ofCells) {
          const id = Number(attribute('numFmtId') ?? 0);
          formats.push(formatOf(id, codes.get(id)));
        }
      },
      close: (name) => {
        if (name === 'cellXfs') ofCells = false;
      },
    });
  return formats;
};
