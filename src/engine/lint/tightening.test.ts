/** @module The rule that an engine type strains no thread beyond its proof load, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('strains no thread beyond its proof load', [
  {
    breaks: 'stages that fall',
    changes: [['[40 N·m, 70 N·m, 95 N·m]', '[40 N·m, 95 N·m, 70 N·m]']],
    says: /stage 3 of main cap bolts is not above the one before/,
    on: '[40 N·m, 95 N·m, 70 N·m]',
  },
  {
    breaks: 'friction that cannot be',
    changes: [['friction: [0.10, 0.14]', 'friction: [0.14, 0.10]']],
    says: /coefficients of friction of main cap bolts, 0.14 and 0.1, cannot be right/,
    on: 'friction: [0.14, 0.10]',
  },
  {
    breaks: 'a torque beyond the proof load, as when lbf·ft are copied as N·m the wrong way',
    changes: [['[40 N·m, 70 N·m, 95 N·m]', '[40 N·m, 70 N·m, 95 lbf·ft]']],
    says: /128.8 N·m would pull main cap bolts with 77.\d kN at a friction of 0.1, and the proof load of its thread in class 10.9 is 69.9 kN/,
    on: '95 lbf·ft',
  },
]);

describeRule('turns an angle on from a torque', [
  {
    breaks: 'an angle before any torque',
    changes: [['[20 N·m, 35 N·m, 60 deg]', '[60 deg, 20 N·m, 35 N·m]']],
    says: /big end bolts begin with an angle, and nothing says from where it is turned/,
    on: '[60 deg, 20 N·m, 35 N·m]',
  },
  {
    breaks: 'more than a whole turn',
    changes: [['[20 N·m, 35 N·m, 60 deg]', '[20 N·m, 35 N·m, 600 deg]']],
    says: /stage 3 of big end bolts cannot be turned/,
    on: '[20 N·m, 35 N·m, 600 deg]',
  },
]);
