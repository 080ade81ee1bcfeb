/** @module A person who watches sees that long work goes on; short work and machines are left in peace. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { showing } from './progress.ts';
import type { World } from './world.ts';

const watching = (watched: boolean) => {
  let text = '';
  const err = (more: string) => {
    text += more;
  };
  return { world: { watched, err } as unknown as World, shown: () => text };
};

const lasting = (milliseconds: number) => () =>
  new Promise<string>((done) => setTimeout(() => done('answer'), milliseconds));

describe('work under way', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is shown by the second once it lasts longer than one, and wiped when it ends', async () => {
    const { world, shown } = watching(true);
    const work = showing('Planning', world, lasting(2500));
    await vi.advanceTimersByTimeAsync(2500);
    expect(await work).toBe('answer');
    expect(shown()).toMatch(/^\rPlanning … 1 s\rPlanning … 2 s\r +\r$/);
  });

  it('shows which share is done where the work tells it, once it lasts longer than a second', async () => {
    const { world, shown } = watching(true);
    const work = showing('Planning', world, async (tell) => {
      tell(0.1);
      await vi.advanceTimersByTimeAsync(1500);
      tell(0.5);
      tell(0.504);
      return 'answer';
    });
    expect(await work).toBe('answer');
    expect(shown()).toMatch(/^\rPlanning … 1 s\rPlanning … 50 %\r +\r$/);
  });

  it('is not shown when it is short', async () => {
    const { world, shown } = watching(true);
    const work = showing('Planning', world, lasting(900));
    await vi.advanceTimersByTimeAsync(900);
    await work;
    expect(shown()).toBe('');
  });

  it('is not shown where nobody watches', async () => {
    const { world, shown } = watching(false);
    const work = showing('Planning', world, lasting(5000));
    await vi.advanceTimersByTimeAsync(5000);
    await work;
    expect(shown()).toBe('');
  });

  it('is wiped when it fails, and the failure goes on its way', async () => {
    const { world, shown } = watching(true);
    const work = showing('Planning', world, async () => {
      await lasting(1500)();
      throw new Error('broken');
    });
    const seen = expect(work).rejects.toThrow('broken');
    await vi.advanceTimersByTimeAsync(1500);
    await seen;
    expect(shown()).toMatch(/\r +\r$/);
  });
});
