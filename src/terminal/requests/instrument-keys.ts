/** @module The keys by which an instrument is described, where it enters the register and where it is brought to a job. */
import { figureOfAny, type Key, optional, text } from './keys.ts';
import { given, together, type Values } from './values.ts';

/** Of a torque wrench torques, of a thermometer temperatures; the register knows which kind measures what. */
export const instrumentFigure = (name: string, example: string): Key =>
  figureOfAny(name, ['length', 'torque', 'temperature', 'angle', 'force', 'pressure', 'mass'], example);

export const instrumentKeys: readonly Key[] = [
  text('name', 'mic-50-75'),
  text('kind', '"outside micrometer"'),
  instrumentFigure('least', '50mm'),
  instrumentFigure('greatest', '75mm'),
  instrumentFigure('resolution', '0.001mm'),
  instrumentFigure('permissible-error', '0.004mm'),
  instrumentFigure('repeatability', '0.001mm'),
  optional(instrumentFigure('zero', '-0.002mm')),
  optional(instrumentFigure('turn', '0.5mm')),
  optional(text('set-in', 'mic-75-100')),
  optional(instrumentFigure('set-size', '85.000mm')),
  optional(instrumentFigure('set-shown', '0.000mm')),
  optional(instrumentFigure('correction', '0.002mm')),
  optional(instrumentFigure('correction-uncertainty', '0.001mm')),
  optional(text('material', 'steel')),
];

export const instrumentBody = (values: Values): Values => ({
  ...given(values, { name: 'name', kind: 'kind', resolution: 'resolution', repeatability: 'repeatability' }),
  ...given(values, { 'permissible-error': 'permissibleError', zero: 'zero', turn: 'turn' }),
  ...given(values, { correction: 'correction', 'correction-uncertainty': 'correctionUncertainty' }),
  ...given(values, { material: 'material' }),
  ...together('setTo', given(values, { 'set-in': 'master', 'set-size': 'size', 'set-shown': 'shown' })),
  range: { least: values.least, greatest: values.greatest },
});
