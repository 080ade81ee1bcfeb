/** @module Oil pressure against the manual's least and the trade's rough floor. */
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { roughFloor } from './oil-pressure-check.ts';

const given = { pressure: '2.4bar', speed: '1500rpm', oil: '80°C' };
const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('oil-pressure-check', { ...given, ...texts });
const found = (texts: Readonly<Record<string, string>>, key: string) => known(ask(texts)).results[key]?.value;

describe('oil pressure', () => {
  it('has the rough floor that the trade has', () => {
    // source: common practice, no source: 10 psi (68.95 kPa) for each 1000 rev/min, rounded to 0.7 bar
    const floor = outsideCheck(
      'oil-pressure-check',
      'common practice, no source: 10 psi for each 1000 rev/min, as 0.7 bar',
      '%',
      1.6,
    );
    floor(roughFloor(1000), 68_947.57);
    floor(roughFloor(1800), 1.8 * 68_947.57);
    expect(found({ pressure: '0.9bar' }, 'against-floor')).toBe('below');
    expect(found({}, 'against-floor')).toBe('above');
  });

  it('has a verdict only by the manual’s least', () => {
    expect(found({}, 'verdict')).toBeUndefined();
    expect(known(ask({})).notes[0]).toContain('never a limit');
    // source: public manual's acceptance of a test run: 26 psi at the least
    const manual = { least: '26psi' };
    expect(found({ ...manual, pressure: '27psi' }, 'verdict')).toBe('within');
    expect(found({ ...manual, pressure: '25psi' }, 'verdict')).toBe('outside');
    expect(found({ ...manual, pressure: '26.5±1psi' }, 'verdict')).toBe('unsure');
  });

  it('of cold oil proves nothing', () => {
    const cold = { least: '2bar', hot: '75°C', oil: '40°C' };
    expect(found(cold, 'verdict')).toBe('too cold to tell');
    expect(known(ask(cold)).notes.join()).toContain('colder');
  });

  it('that is too low says what to look at', () => {
    expect(known(ask({ pressure: '0.5bar' })).notes.join()).toContain('Stop and look');
    expect(known(ask({})).notes.join()).not.toContain('Stop and look');
  });

  it.each([
    [{ pressure: '300bar' }, 'pressure'],
    [{ pressure: '2.4N' }, 'pressure=2.4N'],
    [{ speed: '0rpm' }, 'speed'],
    [{ least: '-1bar' }, 'least'],
    [{ oil: '300°C' }, 'oil'],
    [{ hot: '300°C' }, 'hot'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
