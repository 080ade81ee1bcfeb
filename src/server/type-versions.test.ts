/** @module Versions of an engine type over HTTP. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking } from '../../test/job/bench.ts';
import { type Desk, job, openDesk, refusalOf } from '../../test/server/desk.ts';
import { criticalFigures } from '../engine/edit/critical-figures.ts';
import { fileData } from '../engine/edit/edit-engine.ts';

let desk: Desk;
const id = 'sparrowbill-2';
const first = booking.engineType;
const path = `/api/engine-types/${id}`;

beforeEach(async () => {
  desk = await openDesk();
  await desk.post('/api/engine-types', { text: first });
});
afterEach(() => desk.close());

const figuresOf = (text: string) => {
  const file = fileData(text);
  return file.kind === 'answer' ? criticalFigures(file.value.data) : [];
};

/** What somebody types who reads the same in the manual. */
const figures = (text: string) => figuresOf(text).map(({ at, figure }) => ({ at, reads: figure }));

const other = (text: string): string => {
  const [figure] = figuresOf(text);
  if (!figure) throw new Error('the engine type of the test has no critical figure');
  return text.replace(figure.figure, `${figure.figure} (1 in)`);
};

const save = (text: string, after: number, by = 'Ilse Quarrow') =>
  desk.post(`${path}/versions`, { text, after, by });

describe('versions of an engine type', () => {
  it('begin with the one on the shelf, and a new one comes on top under the name of who made it', async () => {
    const answer = await save(other(first), 1);
    expect(answer.status).toBe(201);
    const { versions } = (await (await desk.get(`${path}/versions`)).json()) as {
      versions: readonly { readonly version: number; readonly text: string }[];
    };
    expect(versions.map(({ version }) => version)).toEqual([2, 1]);
    expect(versions[1]?.text).toBe(first);
    expect(versions[0]?.text).toMatch(/entered: \{ by: Ilse Quarrow, on: '\d{4}-\d\d-\d\d' \}/);
  });

  it('are refused to whoever was slower, with what to do', async () => {
    await save(other(first), 1);
    const answer = await save(other(first), 1, 'Odo Ferrick');
    expect(answer.status).toBe(409);
    expect((await refusalOf(answer)).what).toBe('version 2 has been put on the shelf meanwhile');
    expect(await desk.store.engineTypeVersions(id)).toHaveLength(2);
  });

  it('keep one of two that come at the same moment', async () => {
    const answers = await Promise.all([save(other(first), 1), save(first, 1, 'Odo Ferrick')]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409]);
  });

  it('are refused with every trouble where there is an error, or no such type', async () => {
    const answer = await save(first.replace('cylinders: 2', 'cylinders: two'), 1);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ troubles: [{ weight: 'error', line: 7 }] });
    expect(
      (await desk.post('/api/engine-types/none/versions', { text: first, after: 1, by: 'x' })).status,
    ).toBe(404);
    expect((await desk.get('/api/engine-types/none/versions')).status).toBe(404);
    expect((await save(first, 1, ' ')).status).toBe(422);
  });

  it('leave jobs the version that they began with', async () => {
    await desk.send(booking);
    await save(other(first), 1);
    const page = await (await desk.get(`/jobs/${job}/blank-sheet`)).text();
    expect(page).toContain('version 1;');
    expect(await (await desk.get(`/engine-types/${id}/blank-sheet`)).text()).toContain('version 2;');
    expect(await (await desk.get(`/engine-types/${id}/blank-sheet?version=1`)).text()).toContain(
      'version 1;',
    );
    expect((await desk.get('/engine-types/none/blank-sheet')).status).toBe(404);
  });
});

describe('the second check', () => {
  const check = (after: number, by: string, typed: readonly { at: string; reads: string }[]) =>
    desk.post(`${path}/check`, { after, by, figures: typed });

  it('signs the next version where another person read the same', async () => {
    const text = other(first);
    await save(text, 1);
    expect((await check(2, 'ilse quarrow', figures(text))).status).toBe(422);
    const answer = await check(2, 'Odo Ferrick', figures(text));
    expect(answer.status).toBe(201);
    expect(await answer.json()).toMatchObject({ engineType: { version: 3 }, apart: [] });
    const [newest] = await desk.store.engineTypeVersions(id);
    expect(newest?.text).toMatch(/checked: \{ by: Odo Ferrick/);
  });

  it('tells what was read otherwise, for both to see, and signs nothing', async () => {
    const text = other(first);
    await save(text, 1);
    const [one, ...rest] = figures(text);
    const typed = [{ at: one?.at ?? '', reads: '99 mm' }, ...rest];
    const answer = await check(2, 'Odo Ferrick', typed);
    expect(await answer.json()).toMatchObject({ apart: [{ at: one?.at, reads: '99 mm' }] });
    const [newest] = await desk.store.engineTypeVersions(id);
    expect(newest?.text).not.toContain('checked:');
    expect(newest?.text).toMatch(/reads: 99 mm\s+by: Odo Ferrick/);
    expect((await check(2, 'Odo Ferrick', typed)).status).toBe(409);
    expect((await check(3, 'Odo Ferrick', rest)).status).toBe(422);
  });
});
