/** @module Which pictures may be taken, and what becomes of one that is struck out. */
import { describe, expect, it } from 'vitest';
import { bookedIn } from '../../../test/job/bench.ts';
import type { RequestOf } from '../command.ts';
import { isPictureOf, pictureOfWords } from '../picture-of.ts';

const hash = (digit: string): string => digit.repeat(64);

const picture = (of: RequestOf<'take picture'>['of'], digit = 'a'): RequestOf<'take picture'> => ({
  kind: 'take picture',
  picture: { hash: hash(digit), mediaType: 'image/jpeg', width: 1600, height: 1200, bytes: 300_000 },
  of,
  says: 'as it came',
});

const finding = {
  kind: 'note finding',
  component: 'mains',
  place: 'main.2',
  finding: 'scored',
  mayGoBack: false,
  says: 'a groove all round',
} as const;

describe('a picture', () => {
  it('is of the engine, or of a place, an operation or a finding that are there', () => {
    const bench = bookedIn();
    expect(bench.refused(picture({ place: 'main.22' }))).toContain('main.2');
    expect(bench.refused(picture({ operation: 'lift-the-lot' }))).toContain('no operation');
    expect(bench.refused(picture({ finding: 'none' }))).toContain('note the finding first');
    bench.done(finding);
    const id = bench.open.findings[0]?.id ?? '';
    const [operation = ''] = bench.open.sheet.engine.operations.keys();
    for (const [at, of] of [{}, { place: 'main.1' }, { operation }, { finding: id }].entries())
      bench.done(picture(of, String(at)));
    const { pictures, findings, sheet } = bench.open;
    expect(pictures.map(({ of }) => pictureOfWords(sheet.engine, findings, of))).toEqual([
      'the engine',
      sheet.engine.places.get('main.1')?.title,
      sheet.engine.operations.get(operation)?.title,
      `${sheet.engine.places.get('main.2')?.title}, scored`,
    ]);
    const at = (of: RequestOf<'take picture'>['of']) =>
      pictures.filter((one) => isPictureOf(one, of, findings)).map((one) => one.picture.hash[0]);
    expect(at({ place: 'main.2' })).toEqual(['3']);
    expect(at({ operation })).toEqual(['2']);
    expect(at({ finding: id })).toEqual(['3']);
    expect(at({})).toHaveLength(4);
  });

  it('has a size that shows something and can be kept', () => {
    const bench = bookedIn();
    const sized = (size: Partial<RequestOf<'take picture'>['picture']>) => ({
      ...picture({}),
      picture: { ...picture({}).picture, ...size },
    });
    expect(bench.refused(sized({ width: 3 }))).toContain('3 × 1200');
    expect(bench.refused(sized({ height: 20_000 }))).toContain('12000');
    expect(bench.refused(sized({ bytes: 0 }))).toContain('0 bytes');
    expect(bench.refused(sized({ bytes: 4_000_001 }))).toContain('within 4 MB');
  });

  it('is taken once of the same thing, and may show two', () => {
    const bench = bookedIn();
    bench.done(picture({ place: 'main.1' }));
    expect(bench.refused(picture({ place: 'main.1' }))).toContain('there already');
    bench.done(picture({ place: 'main.2' }));
  });

  it('is refused where the pictures of a job would be more than its record can carry', () => {
    const bench = bookedIn();
    const large = (digit: string, place: string) => {
      const asked = picture({ place }, digit);
      return { ...asked, picture: { ...asked.picture, bytes: 4_000_000 } };
    };
    for (const digit of '0123456789') bench.done(large(digit, 'main.1'));
    // The same bytes again take no more room.
    bench.done(large('9', 'main.2'));
    expect(bench.refused(large('a', 'main.1'))).toContain('would pass 40 MB');
  });

  it('that is struck out is shown no more, and the journal says why', () => {
    const bench = bookedIn();
    bench.done(picture({ place: 'main.1' }));
    const id = bench.open.pictures[0]?.id ?? '';
    expect(bench.refused({ kind: 'strike out picture', picture: 'none', why: 'x' })).toContain('no picture');
    expect(bench.refused({ kind: 'strike out picture', picture: id, why: ' ' })).toContain('write why');
    bench.done({ kind: 'strike out picture', picture: id, why: 'the wrong journal' });
    expect(bench.open.pictures).toEqual([]);
    expect(bench.open.picturesStruckOut).toMatchObject([{ picture: { id }, why: 'the wrong journal' }]);
    expect(bench.refused({ kind: 'strike out picture', picture: id, why: 'x' })).toContain('already');
    bench.done(picture({ place: 'main.1' }));
  });
});
