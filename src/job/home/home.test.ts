/** @module Parts find home: their tags, what a scan means, what is refused, and the way on for parts that strayed. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { awaitingDecision } from '../../../demo/jobs/awaiting-decision.ts';
import { brambleholt, mudlark, quillfeather } from '../../../test/engines/demo-engines.ts';
import { Bench } from '../../../test/job/bench.ts';
import { lackingHome } from '../hold/home.ts';
import type { OpenJob } from '../job.ts';
import { homeWords, nextFor, stateWords } from './home-words.ts';
import { type PartHome, partHomesOf } from './part-home.ts';
import { tagsOf } from './tag.ts';
import { readTag, tagText } from './tag-text.ts';

let stripped: OpenJob;
beforeAll(async () => {
  stripped = (await awaitingDecision()).job();
});

const at = (job: OpenJob): Bench => {
  const bench = new Bench();
  bench.job = job;
  return bench;
};

const homeOf = (job: OpenJob, id: string): PartHome => {
  const found = partHomesOf(job).find(({ tag }) => tag.id === id);
  if (found === undefined) throw new Error(`no tag ${id}`);
  return found;
};

const operation = (job: OpenJob, name: string) => {
  const found = job.sheet.engine.operations.get(name);
  if (found === undefined) throw new Error(`no operation ${name}`);
  return found;
};

/** The stripped job with a plan that renews one piston. */
const renewing = (): OpenJob => ({
  ...stripped,
  plan: {
    choices: ['piston.1', 'piston.2', 'piston.3'].map((place) => {
      const does = place === 'piston.2' ? 'replace' : 'put back';
      return {
        slot: `pistons@${place}`,
        option: `pistons@${place}:${does}:standard:`,
        says: does,
        cents: 0,
      };
    }),
    cents: 0,
    days: 0,
    hours: 1,
    ordersBefore: 0,
    by: 'Ilse Quarrow',
    at: '2026-10-09T08:00:00Z',
  },
});

describe('tags', () => {
  it('are one for every part that comes off, numbered from 1 as the strip takes them off', () => {
    const tags = tagsOf(quillfeather());
    expect(tags.map(({ number }) => number)).toEqual(tags.map((_, index) => index + 1));
    expect(new Set(tags.map(({ id }) => id)).size).toBe(tags.length);
    expect(tags.slice(0, 4).map(({ id }) => id)).toEqual([
      'manifold',
      'injector.1',
      'injector.2',
      'injector.3',
    ]);
    expect(tags.find(({ id }) => id === 'piston.3')).toMatchObject({
      title: 'piston 3',
      home: 'cylinder 3',
      keeps: true,
    });
    expect(tags.find(({ id }) => id === 'valve.5')?.home).toBe('cylinder 3, 1 of 2');
    expect(tags.find(({ id }) => id === 'main.2')?.home).toBe('main bearing 2 of 4');
    expect(tags.find(({ id }) => id === 'sump')).toMatchObject({ title: 'sump', keeps: false });
  });

  it('are one for a part with many places that comes off as a whole', () => {
    expect(tagsOf(quillfeather()).filter(({ part }) => part === 'cam')).toMatchObject([
      { id: 'cam', title: 'camshaft', keeps: false },
    ]);
  });

  it('are the same at every asking, in every demo engine', () => {
    for (const engine of [quillfeather, brambleholt, mudlark]) {
      expect(tagsOf(engine())).toEqual(tagsOf(engine()));
      expect(tagsOf(engine()).some(({ keeps }) => keeps)).toBe(true);
    }
  });
});

describe('the text of a tag', () => {
  const read = (text: string) => {
    const tag = readTag(stripped, text);
    return tag.kind === 'answer' ? tag.value.id : `${tag.refusal.what} | ${tag.refusal.remedy}`;
  };

  it('is read back from every tag, in capitals, with spaces, and with the strokes that another keyboard makes of it', () => {
    for (const tag of tagsOf(stripped.sheet.engine)) {
      const text = tagText(stripped, tag);
      for (const scanned of [
        text,
        text.toUpperCase(),
        ` ${text}\t`,
        text.replace('/', '-').replace('.', ':'),
      ])
        expect(read(scanned)).toBe(tag.id);
      expect(read(tag.id)).toBe(tag.id);
      expect(read(tag.title)).toBe(tag.id);
    }
  });

  it('may be the number that is written on the bag, with or without the job', () => {
    for (const { id, number } of tagsOf(stripped.sheet.engine))
      for (const written of [`${number}`, `#${number}`, `No. ${number}`, `J-2/${number}`, `j-2 / ${number}`])
        expect(read(written)).toBe(id);
  });

  it('of another job is refused with that job named', () => {
    expect(read('J-4/piston.3')).toBe(
      'this tag is of job J-4, and this is job J-2 | keep the part out of this engine, and take it back to its own bench',
    );
    expect(read('J-22/7')).toContain('this tag is of job J-22');
  });

  it('that means nothing is refused with what to do', () => {
    expect(read('')).toContain('nothing was scanned');
    expect(read('J-2/pistn.3')).toContain('write piston.3, if that is what is meant');
    expect(read('0')).toContain('is no tag of job J-2');
    expect(read('4006381333931')).toContain('is no tag');
  });

  it('never means two parts, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), (text) => {
        const tag = readTag(stripped, text);
        if (tag.kind === 'answer') expect(tagsOf(stripped.sheet.engine)).toContainEqual(tag.value);
        else expect(tag.refusal.remedy).not.toBe('');
      }),
    );
  });
});

describe('a part on its way home', () => {
  const home = (part: string, place = part) => ({ kind: 'home part' as const, part, place });

  it('is off, goes back, is confirmed, and then held up nothing more', () => {
    expect(stateWords(homeOf(stripped, 'piston.1'))).toBe('off, nothing decided of it yet');
    const job = renewing();
    expect(stateWords(homeOf(job, 'piston.1'))).toBe('off, to go back');
    expect(nextFor(homeOf(job, 'piston.1'))).toContain('Fit pistons and rods');
    const bench = at(job);
    bench.done(home('piston.1'));
    expect(stateWords(homeOf(bench.open, 'piston.1'))).toContain('home, confirmed by Ilse Quarrow');
    expect(bench.refused(home('piston.1'))).toContain('piston 1 is home, confirmed by');
  });

  it('is stopped at a wrong place, with the right one named and the part that belongs there', () => {
    const said = at(stripped).refused(home('piston.3', 'piston.1'));
    expect(said).toContain('piston 3 does not belong at piston 1');
    expect(said).toContain('take it to cylinder 3; cylinder 1 takes piston 1, tag');
    expect(at(renewing()).refused(home('piston.3', 'piston.2'))).toContain(
      'cylinder 2 takes a part without a tag: not going back: the plan has another part there',
    );
    expect(at(stripped).refused(home('piston.3', 'main.1'))).toContain('main bearing 1');
    expect(at(stripped).refused(home('piston.3', 'nowhere'))).toContain('take it to cylinder 3');
  });

  it('that is replaced does not go back, and no part from nowhere does', () => {
    expect(at(renewing()).refused(home('piston.2'))).toContain('keep the old part out of the engine');
    expect(at(stripped).refused(home('piston.9'))).toContain('has no part with the tag “piston.9”');
  });

  it('that was never taken off is not asked for', () => {
    const partial: OpenJob = {
      ...stripped,
      done: new Map([...stripped.done].filter(([name]) => name !== 'draw-pistons')),
    };
    expect(stateWords(homeOf(partial, 'piston.1'))).toBe('on the engine');
    expect(at(partial).refused(home('piston.1'))).toContain('was not taken off');
    expect(lackingHome(partial, operation(partial, 'fit-pistons'))).toEqual([]);
  });

  it('is confirmed at the operation that fits it, and at no other', () => {
    expect(at(stripped).refused({ ...home('piston.1'), operation: 'fit-head' })).toContain(
      'does not fit piston 1',
    );
    at(stripped).done({ ...home('piston.1'), operation: 'fit-pistons' });
  });

  it('holds the operation that fits it until each used one is home; a new one is not asked for', () => {
    const bench = at(renewing());
    const fitting = operation(bench.open, 'fit-pistons');
    expect(lackingHome(bench.open, fitting)).toMatchObject([
      {
        says: 'piston 1, piston 3, big end 1, big end 2 and big end 3 are not confirmed home',
        overrule: 'by a named person',
      },
    ]);
    for (const part of ['piston.1', 'piston.3', 'big-end.1', 'big-end.2']) bench.done(home(part));
    expect(lackingHome(bench.open, fitting)).toMatchObject([{ says: 'big end 3 is not confirmed home' }]);
    bench.done(home('big-end.3'));
    expect(lackingHome(bench.open, fitting)).toEqual([]);
  });

  it('is confirmed anew once its operation was opened again', () => {
    const bench = at(stripped);
    bench.done(home('piston.1'));
    const signed = { by: 'Ilse Quarrow', at: '2026-10-12T09:00:00Z', note: '' };
    bench.job = { ...bench.open, done: new Map(bench.open.done).set('fit-pistons', signed) };
    expect(stateWords(homeOf(bench.open, 'piston.1'))).toContain('fitted, signed by');
    bench.done({ kind: 'reopen operation', operation: 'fit-pistons', why: 'a ring broke' });
    expect(homeOf(bench.open, 'piston.1').state.kind).toBe('off');
    expect(lackingHome(bench.open, operation(bench.open, 'fit-pistons'))[0]?.says).toContain('piston 1');
  });
});

describe('a part that strayed', () => {
  const swapped = {
    kind: 'note part strayed' as const,
    parts: ['piston.1', 'piston.3'],
    how: 'swapped' as const,
    says: 'both bags came open in the washer',
  };
  const decide = (part: string, place?: string) => ({
    kind: 'decide home' as const,
    part,
    ...(place !== undefined && { place }),
    decidedBy: 'P. Sallow',
    why: 'carbon fits its bore',
  });

  it('is in question until a named person decides, and then goes where it was decided', () => {
    const bench = at(stripped);
    bench.done(swapped);
    expect(bench.refused({ kind: 'home part', part: 'piston.1', place: 'piston.1' })).toContain(
      'in question: swapped',
    );
    expect(lackingHome(bench.open, operation(bench.open, 'fit-pistons')).map(({ says }) => says)).toEqual([
      'piston 1 is in question: swapped: both bags came open in the washer',
      'piston 3 is in question: swapped: both bags came open in the washer',
      'piston 2, big end 1, big end 2 and big end 3 are not confirmed home',
    ]);
    bench.done(decide('piston.1', 'piston.3'));
    expect(bench.refused(decide('piston.3', 'piston.3'))).toContain('piston 1 goes there');
    bench.done(decide('piston.3', 'piston.1'));
    expect(homeWords(bench.open, homeOf(bench.open, 'piston.1'))).toBe('cylinder 3');
    expect(bench.refused({ kind: 'home part', part: 'piston.1', place: 'piston.1' })).toContain(
      'take it to cylinder 3; cylinder 1 takes piston 3',
    );
    bench.done({ kind: 'home part', part: 'piston.1', place: 'piston.3' });
  });

  it('and is lost lets another part go to its place', () => {
    const bench = at(stripped);
    bench.done({
      kind: 'note part strayed',
      parts: ['valve.2'],
      how: 'lost',
      says: 'not on the rack since Monday',
    });
    bench.done({ ...decide('valve.2'), why: 'not to be found: a new one is ordered' });
    expect(stateWords(homeOf(bench.open, 'valve.2'))).toBe(
      'not going back: P. Sallow: not to be found: a new one is ordered',
    );
    expect(nextFor(homeOf(bench.open, 'valve.2'))).toContain('take the tag off');
  });

  it('is noted and decided in full or not at all', () => {
    const bench = at(stripped);
    expect(bench.refused({ ...swapped, parts: ['piston.1'] })).toContain('name every part of a kind');
    expect(bench.refused({ ...swapped, parts: ['piston.1', 'valve.1'] })).toContain(
      'name every part of a kind',
    );
    expect(bench.refused({ ...swapped, parts: ['piston.1', 'piston.1'] })).toContain('named twice');
    expect(bench.refused({ ...swapped, says: ' ' })).toContain('write what is known');
    expect(bench.refused({ ...swapped, parts: ['piston.1', 'x'] })).toContain('no part with the tag “x”');
    expect(bench.refused(decide('piston.1', 'piston.1'))).toContain('is not in question');
    bench.done(swapped);
    expect(bench.refused(decide('piston.1', 'valve.1'))).toContain('choose piston.1, piston.2 or piston.3');
    expect(bench.refused({ ...decide('piston.1', 'piston.1'), decidedBy: '' })).toContain('name the person');
    expect(bench.refused({ ...decide('piston.1', 'piston.1'), why: '' })).toContain('by what it was told');
    expect(bench.refused(decide('piston.1', 'piston.2'))).toContain('piston 2 goes there');
  });
});
