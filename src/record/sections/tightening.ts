/** @module The record's tightening: every stage of every joint, bolt by bolt, with what, by whom; and what is tightened again when. */
import type { OpenJob, TightenedStage } from '../../job/job.ts';
import { stageCautions } from '../../job/tighten/cautions.ts';
import { dueWords, tightenDue } from '../../job/tighten/due.ts';
import { type StageStanding, type Tightening, tighteningsOf } from '../../job/tighten/tightening.ts';
import { jointWords, stageText, threadWords } from '../../job/tighten/words.ts';
import { wrenchSetting } from '../../job/tighten/wrench-setting.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { Line, RecordRow, RecordSection } from '../record-model.ts';

const adapterText = ({ stage }: StageStanding, { adapter }: TightenedStage): string => {
  if (adapter === undefined || stage.kind === 'angle') return '';
  const setting = wrenchSetting(stage, adapter);
  const angle = adapter.angle === undefined ? '' : ` at ${typedText(adapter.angle)}`;
  return `adapter of ${typedText(adapter.adapter)}${angle} on a wrench of ${typedText(adapter.wrench)}${
    setting.kind === 'answer' ? `: set to ${formatFigure(setting.value, 1)} N·m` : ''
  }`;
};

const boltsText = ({ boltsAre, longest }: TightenedStage): string =>
  [
    boltsAre === undefined ? '' : `bolts ${boltsAre}`,
    longest === undefined ? '' : `the longest ${typedText(longest)}`,
  ]
    .filter((text) => text !== '')
    .join(', ');

const noteText = (standing: StageStanding, noted: TightenedStage): string =>
  [
    boltsText(noted),
    adapterText(standing, noted),
    noted.overruled === undefined
      ? ''
      : `other order, ${noted.overruled.by} answers for it: ${noted.overruled.why}`,
    noted.note,
  ]
    .filter((text) => text !== '')
    .join('. ');

const rowOf = (joint: Tightening, standing: StageStanding, noted: TightenedStage): RecordRow => ({
  of: `${joint.operation.name}/${joint.fastener.name}/${joint.place.id}/${noted.stage + 1}`,
  cells: [
    joint.operation.title,
    jointWords(joint),
    `${noted.stage + 1}: ${stageText(standing.stage)}, ${threadWords[noted.threadState]}`,
    noted.bolts.join(' '),
    noted.wrench ?? '',
    `${timeText(noted.at)}, ${noted.by}`,
    noteText(standing, noted),
  ],
  ...(noted.overruled === undefined ? {} : { marked: true as const }),
});

/** An operation was signed, and nobody noted the stage. */
const notNoted = (joint: Tightening, standing: StageStanding, at: number): RecordRow => ({
  of: `${joint.operation.name}/${joint.fastener.name}/${joint.place.id}/${at + 1}`,
  cells: [
    joint.operation.title,
    jointWords(joint),
    `${at + 1}: ${stageText(standing.stage)}`,
    `not noted: ${standing.left.join(' ')}`,
    '',
    '',
    '',
  ],
  marked: true,
});

const jointsOf = (job: OpenJob): readonly Tightening[] =>
  [...job.sheet.engine.operations.values()].flatMap((operation) => tighteningsOf(job, operation));

const rowsOf = (job: OpenJob): readonly RecordRow[] =>
  jointsOf(job).flatMap((joint) =>
    joint.stages.flatMap((standing, at) => [
      ...standing.noted.map((noted) => rowOf(joint, standing, noted)),
      ...(standing.left.length > 0 && job.done.has(joint.operation.name)
        ? [notNoted(joint, standing, at)]
        : []),
    ]),
  );

const dueRows = (job: OpenJob): readonly RecordRow[] =>
  tightenDue(job).map((due) => ({
    of: `${due.fastener.name}, ${due.when}`,
    cells: [dueWords(job, due), due.when === 'after hand-over' ? 'for the owner' : due.standing],
    ...(due.when === 'within the job' && due.standing === 'due' ? { marked: true as const } : {}),
  }));

/** None for an engine type whose operations tighten nothing that it knows of. */
export const tighteningSections = (job: OpenJob): readonly RecordSection[] => {
  const rows = rowsOf(job);
  const again = dueRows(job);
  return [
    ...(rows.length === 0
      ? []
      : [
          {
            name: 'tightening',
            title: 'Tightened, stage by stage',
            says: [
              'Each figure holds for the state of the threads that stands with it, and is never converted.',
            ],
            table: {
              heads: ['Operation', 'Joint', 'Stage', 'Bolts in order', 'Wrench', 'When, who', 'Note'],
              rows,
            },
            derived: false,
          },
        ]),
    ...(again.length === 0
      ? []
      : [
          {
            name: 'tightening again',
            title: 'To be tightened again',
            says: [],
            table: { heads: ['What', 'Stands'], rows: again },
            derived: false,
          },
        ]),
  ];
};

/** Wrenches that could not be trusted, orders overruled, stages that nobody noted. */
export const tighteningDeviations = (job: OpenJob): readonly Line[] =>
  jointsOf(job).flatMap((joint) => {
    const signed = job.done.has(joint.operation.name);
    return joint.stages.flatMap((standing, at) => {
      const name = `${jointWords(joint)}, stage ${at + 1}`;
      return [
        ...standing.noted.flatMap(({ overruled }) =>
          overruled === undefined
            ? []
            : [{ name, says: `pulled in another order; ${overruled.by} answers for it: ${overruled.why}` }],
        ),
        ...(signed ? stageCautions(job, standing).map((says) => ({ name, says })) : []),
        ...(signed && standing.left.length > 0
          ? [{ name, says: `not noted for bolts ${standing.left.join(', ')}` }]
          : []),
      ];
    });
  });
