/** @module Setting of valve clearances put together from the file. */
import { type Radians, radians } from '../quantity/brand.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import { given } from './given.ts';
import type { ValveSettingFile } from './timing-file.ts';
import type { ValveSetting } from './valve-setting.ts';

type Angle = 'inlet-opens' | 'inlet-closes' | 'exhaust-opens' | 'exhaust-closes' | 'rest';

export const valveSettingOf = (reader: FigureReader, file: ValveSettingFile): ValveSetting => {
  const angle = (key: Angle): Radians =>
    radians(readFigure(reader, file[key], 'angle', ['valve-setting', key]).amount);
  return {
    inlet: file.inlet,
    exhaust: file.exhaust,
    events: {
      inletOpens: angle('inlet-opens'),
      inletCloses: angle('inlet-closes'),
      exhaustOpens: angle('exhaust-opens'),
      exhaustCloses: angle('exhaust-closes'),
    },
    rest: angle('rest'),
    engineIs: file['engine-is'],
    turn: file.turn,
    ...given('lift', file.lift),
    ...given('order', file.order),
  };
};
