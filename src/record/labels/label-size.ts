/** @module The papers that labels are printed on: sheets for A4 and Letter, a strip printer's rolls, cards for bags. */

export interface LabelSize {
  /** As it is chosen: `70x37`. */
  readonly name: string;
  /** For a list: `70 x 37 mm, 24 on A4`. */
  readonly title: string;
  /** mm, as every length here. */
  readonly page: { readonly width: number; readonly height: number };
  readonly label: { readonly width: number; readonly height: number };
  readonly columns: number;
  readonly rows: number;
  /** Between columns. */
  readonly gap: number;
  /** Words run along the strip, at a right angle to how it comes out of the printer. */
  readonly turned?: true;
  /** With rows to write on. */
  readonly card?: true;
}

const a4 = { width: 210, height: 297 };
const letter = { width: 215.9, height: 279.4 };

const sheet = (
  page: LabelSize['page'],
  paper: string,
  [width, height]: readonly [number, number],
  [columns, rows]: readonly [number, number],
  gap: number,
): LabelSize => ({
  name: `${width}x${height}`,
  title: `${width} x ${height} mm, ${columns * rows} on ${paper}`,
  page,
  label: { width, height },
  columns,
  rows,
  gap,
});

const roll = (width: number, length: number, turned: boolean): LabelSize => ({
  name: `roll-${width}`,
  title: `strip ${width} mm wide, ${length} mm a label`,
  page: { width, height: length },
  label: turned ? { width: length, height: width } : { width, height: length },
  columns: 1,
  rows: 1,
  gap: 0,
  ...(turned && { turned }),
});

const cards = (name: string, page: LabelSize['page'], paper: string): LabelSize => ({
  name,
  title: `cards for bags, 4 on ${paper}`,
  page,
  label: { width: page.width / 2, height: page.height / 2 },
  columns: 2,
  rows: 2,
  gap: 0,
  card: true,
});

/** Sizes that are sold everywhere; the margins are what is left over, the same on both sides. */
export const labelSizes: readonly LabelSize[] = [
  sheet(a4, 'A4', [70, 37], [3, 8], 0),
  sheet(a4, 'A4', [63.5, 38.1], [3, 7], 2.5),
  sheet(a4, 'A4', [99.1, 67.7], [2, 4], 2.5),
  sheet(letter, 'Letter', [66.7, 25.4], [3, 10], 3.2),
  sheet(letter, 'Letter', [101.6, 50.8], [2, 5], 4.8),
  roll(62, 40, false),
  roll(29, 80, true),
  cards('cards', a4, 'A4'),
  cards('cards-letter', letter, 'Letter'),
];

/** Where each label of a sheet begins, across and then down. */
export const spotsOf = ({
  page,
  label,
  columns,
  rows,
  gap,
  turned,
}: LabelSize): readonly { readonly x: number; readonly y: number }[] => {
  if (turned) return [{ x: 0, y: 0 }];
  const left = (page.width - columns * label.width - (columns - 1) * gap) / 2;
  const top = (page.height - rows * label.height) / 2;
  return Array.from({ length: columns * rows }, (_, at) => ({
    x: left + (at % columns) * (label.width + gap),
    y: top + Math.floor(at / columns) * label.height,
  }));
};
