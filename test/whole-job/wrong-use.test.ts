/** @module Whatever is mistyped is answered on stderr with what, where and what to do, an exit code of 2, and no fault. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
const engine = demoFile('engines/quillfeather-3w.yaml');
const readings = demoFile('readings/quillfeather-worn.csv');

beforeAll(() => {
  mkdirSync(join(at.folder, 'folder'));
  writeFileSync(join(at.folder, 'picture.png'), Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]));
  writeFileSync(join(at.folder, 'empty'), '');
  writeFileSync(join(at.folder, 'bad.yaml'), 'format: endfloat engine type 1\nid: X\n');
  writeFileSync(
    join(at.folder, 'bad.csv'),
    'place,characteristic,plane,axis,reading,unit\nmain.9,main-journal-diameter,front,vertical,54.961,mm\n',
  );
  writeFileSync(join(at.folder, 'record.html'), '<html></html>');
});
afterAll(at.clear);

/** No trace of the program's inside, and not a word of it on stdout. */
const plainlyTold = ({ out, err }: { readonly out: string; readonly err: string }) => {
  expect(err).not.toMatch(/\n\s+at |node:internal|Error:|undefined|\[object/);
  expect(err).toMatch(/^endfloat: .+\n$/s);
  expect(out).toBe('');
};

describe('wrong use', () => {
  it.each([
    [['chekc', 'x'], /no command chekc.*did you mean check/],
    [['--nonsense'], /no command --nonsense.*--help lists the commands/],
    [['check'], /something is missing.*check ENGINE-FILE/],
    [['check', 'absent.yaml'], /no such file \(absent\.yaml\): look at the spelling/],
    [['check', 'folder'], /this is a folder \(folder\): name a file/],
    [['check', engine, 'more'], /too much is given: more/],
    [['check', engine, '--jsno'], /no option --jsno.*did you mean json/],
    [['judge', engine, 'absent.csv'], /no such file \(absent\.csv\)/],
    [['judge', engine, 'picture.png'], /not a text file in UTF-8 \(picture\.png\)/],
    [
      ['judge', engine, readings, '--found', 'mainz=0.25'],
      /no component mainz \(--found\): choose one of mains/,
    ],
    [['judge', engine, readings, '--found', 'mains=0.33'], /no size 0\.33 .*standard, 0\.25, 0\.50/],
    [['judge', engine, readings, '--conformance', '95'], /95 is no probability.*such as 0\.95/],
    [['plan', engine, readings, '--days', 'soon'], /soon is not a number \(--days\)/],
    [['plan', engine, readings, '--within', 'little'], /little is not a number \(--within\)/],
    [
      ['plan', engine, readings, '--within', '5', '--trade-off'],
      /each asks for other plans .*one of them at a time/,
    ],
    [['reckon', 'piston-travle'], /no sum piston-travle.*did you mean piston-travel/],
    [['reckon', 'piston-travel', 'stroke'], /stroke is not key=value/],
    [['reckon', 'piston-travel', 'stroke=98mm'], /needs rod, angle too.*rod=/],
    [['reckon', 'piston-travel', 'stroke=98', 'rod=168mm', 'angle=20deg'], /the unit is missing.*stroke=98/],
    [
      ['reckon', 'piston-travel', 'stroke=98mm', 'rod=168kN', 'angle=20deg'],
      /kN is a unit of force.*rod=168kN/,
    ],
    [['reckon', 'piston-travel', 'stroke=NaNmm', 'rod=168mm', 'angle=20deg'], /stroke=/],
    [['reckon', 'nonsense', '--help'], /no sum nonsense/],
    [['jobs'], /no workshop here .*endfloat demo/],
    [['jobs', '--store', 'folder'], /the store is a folder/],
    [['jobs', '--store', 'picture.png'], /not a store .*picture\.png/],
    [['jobs', '--store'], /--store wants a value/],
    [['show', 'J-1'], /no workshop here/],
    [['book-in', engine], /owner, plate, hours, complaint missing/],
    [
      ['book-in', engine, 'owner=A', 'plate=1', 'hours=1,500h', 'complaint=c', 'currency=crowns'],
      /read in two ways \(hours=1,500h\)/,
    ],
    [['do', 'J-1', 'take-redaing'], /did you mean take-reading/],
    [['do', 'J-1', 'take-reading', 'plaice=main.1'], /no key plaice.*did you mean place/],
    [['verify', 'absent.html'], /no such file/],
    [['serve', '--port', 'web'], /this is no port \(--port\): give a number/],
    [['export'], /something is missing/],
    [['import', 'folder'], /this is a folder/],
  ] as const)('is told: %j', async (words, told) => {
    const ended = await at.ask(words);
    plainlyTold(ended);
    expect(ended.err).toMatch(told);
    expect(ended.code).toBe(2);
  });
});

describe('the answer no', () => {
  it.each([
    [['judge', 'bad.yaml', readings], /^bad\.yaml:\d+:\d+: error: .+mend them/s],
    [['judge', engine, 'bad.csv'], /^bad\.csv:2: error: .*main\.9.+mend them/s],
    [['judge', engine, 'empty'], /^empty:.* error: .+mend them/s],
    [['verify', 'record.html'], /does not verify: there is no record in this file/],
    [['verify', 'empty'], /does not verify/],
    [['import', 'record.html'], /does not verify/],
  ] as const)('is told on stderr, with an exit code of 1: %j', async (words, told) => {
    const ended = await at.ask(words);
    expect(ended.err).toMatch(told);
    expect(ended.err).not.toMatch(/\n\s+at |node:internal/);
    expect(ended.code).toBe(1);
  });

  it('of a lint is told by file, line and column', async () => {
    const { code, out } = await at.ask(['check', 'bad.yaml']);
    expect(out).toMatch(/^bad\.yaml:2:\d+: error: /m);
    expect(code).toBe(1);
  });
});

describe('help', () => {
  it.each([
    [[]],
    [['--help']],
    [['-h']],
    [['help']],
    [['help', 'plan']],
    [['plan', '--help']],
    [['reckon', '--help']],
    [['reckon', 'shim-pack', '--help']],
  ])('is given without complaint: %j', async (words) => {
    const { code, out, err } = await at.ask(words);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.length).toBeGreaterThan(100);
  });
});

describe('as a program of its own', () => {
  it('ends with the code 2 for wrong use, 1 for no, 0 for done, and says why on stderr', async () => {
    const wrong = await at.run(['chekc']);
    expect(wrong).toMatchObject({ code: 2, out: '' });
    plainlyTold(wrong);
    expect(await at.run(['verify', 'record.html'])).toMatchObject({ code: 1, out: '' });
    expect(await at.run(['check', engine])).toMatchObject({ code: 0, err: '' });
  }, 60_000);
});
