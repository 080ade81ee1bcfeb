/** @module Timing of pumps put together from the file: figures in the core's units, the rate by the cam where no figure is given. */
import { mm, radians } from '../quantity/brand.ts';
import { type CamLaw, camRate } from './cam-law.ts';
import type { EngineFile } from './engine-file.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { wrong } from './finding.ts';
import { given } from './given.ts';
import { readBounds } from './limits.ts';
import type { PumpTiming, TimingCheck } from './pump-timing.ts';
import type { PumpTimingFile } from './timing-file.ts';

const top: FilePath = ['pump-timing'];
const camAt: FilePath = [...top, 'cam'];

const shapeOf = (
  reader: FigureReader,
  { 'lift-table': table, flank }: NonNullable<PumpTimingFile['cam']>,
): CamLaw['shape'] | undefined => {
  if ((table === undefined) === (flank === undefined)) {
    reader.findings.push(
      wrong(
        camAt,
        table === undefined
          ? 'the cam has neither a table of lifts nor a flank'
          : 'the cam has both a table of lifts and a flank',
        'give the one that the manual has: `lift-table` or `flank`',
      ),
    );
    return undefined;
  }
  const length = (text: string, path: FilePath) => mm(readFigure(reader, text, 'length', path).amount);
  if (flank !== undefined) {
    const at = [...camAt, 'flank'];
    return {
      kind: 'flank',
      flank: {
        base: length(flank['base-radius'], [...at, 'base-radius']),
        radius: flank.radius === 'straight' ? 'straight' : length(flank.radius, [...at, 'radius']),
        tappet: flank.tappet === 'flat' ? 'flat' : length(flank.tappet, [...at, 'tappet']),
      },
    };
  }
  return {
    kind: 'table',
    points: (table ?? []).map(([angle, lift], index) => ({
      angle: radians(readFigure(reader, angle, 'angle', [...camAt, 'lift-table', index, 0]).amount),
      lift: length(lift, [...camAt, 'lift-table', index, 1]),
    })),
  };
};

const camOf = (reader: FigureReader, file: NonNullable<PumpTimingFile['cam']>): CamLaw | undefined => {
  const shape = shapeOf(reader, file);
  const point = readFigure(reader, file['timing-point'], 'angle', [...camAt, 'timing-point']).amount;
  return (
    shape && {
      crankPerAngle: file['angles-of'] === 'camshaft at half crank speed' ? 2 : 1,
      timingPoint: radians(point),
      shape,
    }
  );
};

/** The rate by the cam; what bars it is put down. */
const byCam = (reader: FigureReader, cam: CamLaw): number => {
  const rated = camRate(cam);
  if (rated.kind === 'answer') return rated.value.rate;
  reader.findings.push(wrong(camAt, rated.refusal.what, rated.refusal.remedy));
  return Number.NaN;
};

const rateOf = (reader: FigureReader, file: PumpTimingFile, cam: CamLaw | undefined): number => {
  if (file.rate !== undefined)
    return readFigure(reader, file.rate, 'angle-per-length', [...top, 'rate']).amount;
  if (cam !== undefined) return byCam(reader, cam);
  if (file.cam === undefined)
    reader.findings.push(
      wrong(
        [...top, 'rate'],
        'it is not said how many degrees of crank a millimetre of shim comes to',
        "give `rate`, such as 9.5 deg/mm, from the manual's page on pump timing; or `cam`, the lift of the pump's cam at the timing point, from which it follows",
      ),
    );
  return Number.NaN;
};

const checkOf = (
  reader: FigureReader,
  file: NonNullable<PumpTimingFile['check']>,
  characteristics: EngineFile['characteristics'],
): TimingCheck => {
  const at = [...top, 'check'];
  const of = file.characteristic;
  const quantity =
    (Object.hasOwn(characteristics, of) ? characteristics[of]?.quantity : undefined) ?? 'length';
  return {
    of,
    nominal: readFigure(reader, file.nominal, quantity, [...at, 'nominal']).amount,
    largerIs: file['larger-is'],
    ...given(
      'rim',
      file.rim === undefined
        ? undefined
        : readFigure(reader, file.rim, 'length-per-angle', [...at, 'rim']).amount,
    ),
    ...given(
      'spread',
      file.spread === undefined
        ? undefined
        : radians(readFigure(reader, file.spread, 'angle', [...at, 'spread']).amount),
    ),
  };
};

export const pumpTimingOf = (
  reader: FigureReader,
  file: PumpTimingFile,
  characteristics: EngineFile['characteristics'],
): PumpTiming => {
  const length = (key: 'datum' | 'tolerance') =>
    mm(readFigure(reader, file[key], 'length', [...top, key]).amount);
  const cam = file.cam && camOf(reader, file.cam);
  const rate = radians(rateOf(reader, file, cam));
  return {
    at: file.at,
    datum: length('datum'),
    depth: file.depth,
    ...given('packIs', file['pack-is']),
    ...given('found', file.found),
    ...given('lift', file.lift),
    shimsSit: file['shims-sit'],
    addingShims: file['adding-shims'],
    rate,
    ...given('rateGiven', file.rate === undefined ? undefined : rate),
    ...given('cam', cam),
    tolerance: length('tolerance'),
    mostShims: file['most-shims'],
    range: readBounds(reader, file.range, [...top, 'range']),
    shims: file.shims.map((text, index) =>
      mm(readFigure(reader, text, 'length', [...top, 'shims', index]).amount),
    ),
    ...given('check', file.check && checkOf(reader, file.check, characteristics)),
  };
};
