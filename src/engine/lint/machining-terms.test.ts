/** @module The rule that an engine type tells the machine shop only what can be kept to, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const mains = '  mains:\n    title: main journals of the crankshaft\n    at: main';

describeRule('tells the machine shop only what can be kept to', [
  {
    breaks: 'limits of a fillet that cross',
    changes: [
      [
        '{ least: 2.8 mm, greatest: 3.2 mm }\n      chamfer: { least: 0.4 mm, greatest: 0.8 mm }\n      marks: the undersize on the front web, letters of 4 mm\n      also',
        '{ least: 3.8 mm, greatest: 3.2 mm }\n      chamfer: { least: 0.4 mm, greatest: 0.8 mm }\n      marks: the undersize on the front web, letters of 4 mm\n      also',
      ],
    ],
    says: /limits of the fillet cross: least 3.8 mm, greatest 3.2 mm/,
    on: 'least: 3.8 mm',
  },
  {
    breaks: 'a finish in millimetres that was meant in micrometres',
    changes: [['finish: { least: 0.6 µm, greatest: 1.0 µm }', 'finish: { least: 0.6 µm, greatest: 1.0 mm }']],
    says: /a roughness of 1 mm is no finish.*micrometres/,
    on: 'greatest: 1.0 mm }',
  },
  {
    breaks: 'magnetic particles on aluminium',
    changes: [
      ['    title: main journal diameter\n', '    title: main journal diameter\n    material: aluminium\n'],
      [
        'crack-test: { before: magnetic particles, after: magnetic particles }',
        'crack-test: { before: dye penetrant, after: magnetic particles  }',
      ],
    ],
    says: /magnetic particles show no crack in aluminium: ask for dye penetrant/,
    on: 'after: magnetic particles  }',
  },
  {
    breaks: 'terms for a part that nobody machines',
    changes: [
      [
        '  head:\n    title: cylinder head\n',
        '  head:\n    machining: { marks: none }\n    title: cylinder head\n',
      ],
    ],
    says: /nobody offers to machine cylinder head/,
    on: 'machining: { marks: none }',
    weight: 'warning',
  },
  {
    breaks: 'a part used but once that nothing calls for',
    changes: [['    disturbed-by: [drop-sump]\n', '']],
    says: /nothing calls for new sump gasket/,
    on: 'title: sump gasket',
    weight: 'warning',
  },
  {
    breaks: 'an operation, a part or a place that is not there',
    changes: [['    disturbed-by: [drop-sump]\n', '    disturbed-by: [drop-the-sump]\n']],
    says: /there is no operation drop-the-sump: .*drop-sump/,
    on: 'drop-the-sump',
  },
  {
    breaks: 'a check on arrival of what is measured elsewhere',
    changes: [[mains, `${mains}\n    arrival: [bore-diameter]`]],
    says: /main journals of the crankshaft sit at 4 places, bore diameter is taken at 3/,
    on: 'arrival: [bore-diameter]',
  },
]);
