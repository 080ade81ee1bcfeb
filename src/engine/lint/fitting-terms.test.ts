/** @module The rule that a fitting can be reckoned, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const terms = '      clearance: piston-clearance\n';

describeRule('says how parts are fitted to places so that it can be reckoned', [
  {
    breaks: 'a clearance without a middle to aim at',
    changes: [[terms, '      clearance: bore-ovality\n']],
    says: /has no least and greatest limit as made/,
    on: 'clearance: bore-ovality',
  },
  {
    breaks: 'two halves of one name',
    changes: [[terms, `${terms}      halves: [half, half]\n`]],
    says: /both halves are called half: call them apart/,
    on: 'halves: [half, half]',
  },
  {
    breaks: 'room that is no length',
    changes: [
      [
        '  piston-diameter:\n    title:',
        '  ring-load:\n    title: load of the rings\n    at: piston\n    quantity: force\n    wears: smaller\n  piston-diameter:\n    title:',
      ],
      ['      room: bore-diameter\n', '      room: ring-load\n'],
    ],
    says: /load of the rings is no length/,
    on: 'room: ring-load',
  },
  {
    breaks: 'a clearance that is taken elsewhere',
    changes: [[terms, '      clearance: main-clearance\n']],
    says: /pistons sit at 3 places, .* is taken at 4/,
    on: 'clearance: main-clearance',
  },
  {
    breaks: 'room that is not there',
    changes: [['      room: bore-diameter\n', '      room: bore-diamter\n']],
    says: /there is no characteristic bore-diamter/,
    on: 'room: bore-diamter',
  },
]);
