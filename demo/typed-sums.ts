/** @module What hands type into the sums of the demo engines, where the job does not give it. Invented, each figure. */
import type { Texts } from '../src/job/sum/sum-at.ts';

/** By engine type, then by operation and sum; by place too where the figures differ. */
const typed: Readonly<Record<string, Readonly<Record<string, Texts>>>> = {
  'quillfeather-3w': {
    'fit-crank-pinion heat': { bore: '40.012 ± 0.003 mm', shaft: '40.040 ± 0.003 mm' },
    'close-rear-seal end-float': { readings: '0.02, 0.20; 0.01, 0.20; 0.02, 0.21 mm' },
    'ring-pistons side-clearance': { groove: '2.560 ± 0.006 mm', ring: '2.478 ± 0.003 mm' },
    'ring-pistons masses': { pistons: 'P1 612.4 ± 0.2, P2 615.0 ± 0.2, P3 609.1 ± 0.2 g' },
    'fit-pistons big-end-clearance': { housing: '51.030 ± 0.004 mm', wall: '1.492 ± 0.002 mm' },
    'fit-camshaft lobes': {
      lifts:
        '0, 0.6, 2.4, 5.1, 7.6, 9.2, 10.0, 9.2, 7.6, 5.1, 2.4, 0.6, 0; 0, 0.5, 2.3, 5.0, 7.5, 9.1, 9.9, 9.1, 7.5, 5.0, 2.3, 0.5, 0; 0, 0.6, 2.4, 5.0, 7.6, 9.2, 10.0, 9.2, 7.6, 5.0, 2.4, 0.6, 0 mm',
      from: '300 deg',
      step: '10 deg',
    },
    'fit-valves stem-clearance': { guide: '8.020 ± 0.004 mm', stem: '7.952 ± 0.003 mm' },
    'fit-head gasket': { 'stand-out': '0.44, 0.47; 0.45, 0.46; 0.42, 0.45 mm' },
    'fit-head adapter': { wrench: '400 ± 10 mm' },
    'find-top-dead-centre top': {
      pairs: '3 mm: 341.8 18.3; 5 mm: 336.4 23.6; 8 mm: 330.2 29.9',
    },
    'find-top-dead-centre spill-point': { travel: '4.60 mm' },
    'balance-pumps balance': { deliveries: '1 24.1 ± 0.1, 2 24.3 ± 0.1, 3 23.9 ± 0.1 cm³' },
    'set-governor droop': { 'no-load': '1560 ± 2 rpm', 'full-load': '1500 ± 2 rpm' },
    'set-governor band': { highest: '1532 ± 1 rpm', lowest: '1526 ± 1 rpm' },
    'full-load oil-pressure': { pressure: '2.8 ± 0.1 bar', speed: '1500 rpm', oil: '84 °C' },
    'full-load power': {
      power: '15.4 ± 0.2 kW',
      pressure: '98.6 ± 0.1 kPa',
      temperature: '27 ± 1 °C',
      humidity: '50 ± 5 %',
      fuel: '0.375 ± 0.002 kg',
      time: '6 min',
      speed: '1500 ± 2 rpm',
    },
  },
  'mudlark-1': {
    'close-end-cover end-float': { readings: '0.03, 0.21; 0.03, 0.22; 0.02, 0.21 mm' },
    'fit-head bump': { lead: '0.83, 0.80 mm' },
    'run-in oil-pressure': { pressure: '3.0 ± 0.1 bar', speed: '1500 rpm', oil: '78 °C' },
    'run-in droop': { 'no-load': '1590 ± 3 rpm', 'full-load': '1500 ± 3 rpm' },
  },
};

/** What is typed into a sum of an operation; nothing where the job gives it all. */
export const typedInto = (engine: string, operation: string, sum: string): Texts =>
  typed[engine]?.[`${operation} ${sum}`] ?? {};

const fitted: Readonly<Record<string, string>> = {
  'mudlark-1 lay-crankshaft clearance': 'the bushes put back as they were',
  'mudlark-1 close-end-cover end-float': 'both thrust washers put back',
  'mudlark-1 fit-head bump': 'no shim under the barrel',
  'quillfeather-3w fit-head gasket': 'gasket of grade 2',
};

/** What was fitted by what a sum gave, where anybody says so. */
export const fittedBy = (engine: string, operation: string, sum: string): string =>
  fitted[`${engine} ${operation} ${sum}`] ?? '';
