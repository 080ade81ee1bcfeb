/** @module The record's head: whose bench, whose engine, which one, in what state it came and when it went. */
import type { OpenJob } from '../../job/job.ts';
import { scopeNow } from '../../job/scope-words.ts';
import { ruleText } from '../../measure/decision-rule.ts';
import { ruleOf } from '../../measure/sheet.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { Line } from '../record-model.ts';

export const headingOf = (job: OpenJob): readonly Line[] => {
  const { booked, handedOver } = job;
  const { engine } = job.sheet;
  const checked = engine.checked
    ? `checked by ${engine.checked.by}, ${engine.checked.on}`
    : 'not checked by a second person';
  return [
    ...(booked.shop === undefined ? [] : [{ name: 'Shop', says: booked.shop }]),
    { name: 'Job', says: booked.number },
    { name: 'Owner', says: booked.owner },
    { name: 'Engine', says: engine.title },
    { name: 'Plate', says: booked.plate },
    { name: 'Hours run', says: typedText(booked.hoursRun) },
    { name: 'Complaint', says: booked.complaint },
    ...(job.scopes.length === 0 ? [] : [{ name: 'Scope', says: scopeNow(job) }]),
    { name: 'Booked in', says: `${timeText(booked.at)}, ${booked.by}` },
    {
      name: 'Limits from',
      says: `${engine.source}; engine type ${engine.id} version ${engine.version}, ${checked}`,
    },
    {
      name: 'Rule',
      says: ruleText(ruleOf(job.sheet)),
    },
    ...(handedOver === undefined
      ? [{ name: 'Handed over', says: 'not yet: this record is of an unfinished job' }]
      : [
          {
            name: 'Handed over',
            says: `${timeText(handedOver.at)} to ${handedOver.to}, by ${handedOver.by}${handedOver.note === '' ? '' : `: ${handedOver.note}`}`,
          },
        ]),
  ];
};
