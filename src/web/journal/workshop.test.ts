/** @module Checks of what this bench sends: a picture goes before what is said of it, and is kept until that is taken. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { drawnPng } from '../../../test/picture/drawn-png.ts';
import type { Command } from '../../job/command.ts';
import { cleanPicture } from '../../picture/picture.ts';
import type { PictureBox } from './picture-box.ts';
import { workshop } from './workshop.ts';

const clean = cleanPicture(drawnPng(), 'picture');
if (clean.kind === 'refused') throw new Error(clean.refusal.what);
const { picture, bytes } = clean.value;

const command: Command = {
  id: 'c-1',
  job: 'j-1',
  at: '2026-03-02T08:00:00Z',
  actor: 'Ilse Quarrow',
  bench: 'bench 2',
  request: { kind: 'take picture', picture, of: {}, says: '' },
};

/** A box with the picture in it, and what was asked of a server that answers as it is told. */
const bench = (answers: Readonly<Record<string, (() => Response) | undefined>>) => {
  const kept = new Map([[picture.hash, bytes]]);
  const asked: string[] = [];
  vi.stubGlobal('fetch', async (address: string, { method }: RequestInit) => {
    asked.push(`${method} ${address}`);
    const answer = answers[method ?? ''];
    if (!answer) throw new TypeError('the network is away');
    return answer();
  });
  const box: PictureBox = {
    keep: async () => true,
    bytes: async (hash) => kept.get(hash),
    drop: async (hash) => void kept.delete(hash),
  };
  return { kept, asked, send: () => workshop(box).send(command, 3) };
};

const events = () => Response.json({ events: [] });
const put = () => Response.json({ picture: picture.hash }, { status: 201 });
const refusal = { what: 'no', where: 'store', remedy: 'ask again' };
const no = () => Response.json({ refusal }, { status: 422 });

afterEach(() => vi.unstubAllGlobals());

describe('a picture that waits at this bench', () => {
  it('goes before the command that names it, and is let go once that is taken', async () => {
    const { kept, asked, send } = bench({ PUT: put, POST: events });
    expect(await send()).toEqual({ kind: 'events', events: [] });
    expect(asked).toEqual([`PUT /api/pictures/${picture.hash}`, 'POST /api/jobs/j-1/commands']);
    expect(kept.size).toBe(0);
  });

  it.each([
    ['the network is away', undefined],
    ['the server stumbles', () => Response.json({ refusal }, { status: 500 })],
  ])('stays, and nothing is said of it, while %s', async (_, answer) => {
    const { kept, asked, send } = bench({ PUT: answer, POST: events });
    expect(await send()).toEqual({ kind: 'no answer' });
    expect(asked).toHaveLength(1);
    expect(kept.size).toBe(1);
  });

  it('stays where the store will not have it, or not what is said of it, with the reason told', async () => {
    const unwanted = bench({ PUT: no, POST: events });
    expect(await unwanted.send()).toEqual({ kind: 'refused', refusal });
    expect(unwanted.kept.size).toBe(1);
    const unsaid = bench({ PUT: put, POST: no });
    expect(await unsaid.send()).toEqual({ kind: 'refused', refusal });
    expect(unsaid.kept.size).toBe(1);
  });

  it('is not sent again where another page has sent it and let it go', async () => {
    const { kept, asked, send } = bench({ POST: events });
    kept.clear();
    expect(await send()).toMatchObject({ kind: 'events' });
    expect(asked).toEqual(['POST /api/jobs/j-1/commands']);
  });
});
