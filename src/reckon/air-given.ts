/** @module The air at the engine as sums of power take it, and what is wrong with it. */
import { type Answer, refuse } from '../quantity/refusal.ts';
import { quantityInput } from './inputs.ts';
import { type Input, quantityOf, type Values } from './reckoning.ts';

export const airInputs: readonly Input[] = [
  quantityInput(
    'pressure',
    'pressure',
    'barometer at the engine, not reduced to sea level',
    '50 to 110 kPa',
    '96.2±0.1kPa',
  ),
  quantityInput('temperature', 'temperature', 'air where it enters the engine', '−40 to 60 °C', '31±1°C'),
  quantityInput('humidity', 'ratio', 'relative humidity of that air', '0 to 100 %', '45±5%'),
];

/**
 * What is wrong with the air as given.
 *
 * @internal
 */
export const misgivenAir = (values: Values): Answer<never> | undefined => {
  const [pressure, temperature, humidity] = ['pressure', 'temperature', 'humidity'].map(
    (key) => quantityOf(values, key).value,
  ) as [number, number, number];
  if (!(pressure >= 50e3 && pressure <= 110e3))
    return refuse(
      'no barometer at work stands there: 50 kPa is 5,500 m up, 110 kPa is more than was ever seen',
      'pressure',
      'give 50 to 110 kPa, as read at the engine and not reduced to sea level',
    );
  if (!(temperature >= -40 && temperature <= 60))
    return refuse('no engine breathes such air', 'temperature', 'give −40 to 60 °C');
  return humidity >= 0 && humidity <= 1
    ? undefined
    : refuse('a relative humidity is a share', 'humidity', 'give 0 to 100 %');
};
