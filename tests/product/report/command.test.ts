import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const fed = 'include: small.yaml\ntitle: Fed double\nfish: { tilapia: { ration: 3 %/d } }\n';
const folder = folderWith({ 'fed.yaml': fed });
const inFolder = (name: string): string => join(folder, name);

describe('leat report', () => {
  it('is in the help', async () => {
    expect((await leat(['--help'], folder)).out).toContain('report [options] <files...>');
  });

  it('writes report.html, or where it is told to', async () => {
    const { code, out, err } = await leat(['report', 'small.yaml', '--days', '10'], folder);
    expect([code, out, err]).toEqual([0, '', 'report.html written\n']);
    expect(readFileSync(inFolder('report.html'), 'utf8')).toMatch(/^<!doctype html>/i);
    const two = await leat(['report', 'small.yaml', 'fed.yaml', '--days', '10', '--out', 'two.html'], folder);
    expect(two.code).toBe(0);
    expect(readFileSync(inFolder('two.html'), 'utf8')).toContain('How the runs differ, and why');
  });

  it('takes documents of leat run --json, and says what they cannot tell', async () => {
    writeFileSync(
      inFolder('saved.json'),
      (await leat(['run', 'small.yaml', '--json', '--days', '10'], folder)).out,
    );
    const { code } = await leat(
      ['report', 'saved.json', 'fed.yaml', '--days', '10', '--out', 's.html'],
      folder,
    );
    expect(code).toBe(0);
    const page = readFileSync(inFolder('s.html'), 'utf8');
    for (const words of [
      'a saved document holds no vessels and flows to draw',
      'a saved document cannot be asked why',
      'from a saved document',
    ])
      expect(page).toContain(words);
  });

  it('of a run that breaks off on day 0 is written, tells so, and leaves as run and compare do', async () => {
    writeFileSync(
      inFolder('broken.yaml'),
      'include: small.yaml\ntitle: Broken\nparameters: { oxygen.saturation.a: 1000 }\n',
    );
    const answer = await leat(['report', 'broken.yaml', 'fed.yaml', '--out', 'broken.html'], folder);
    expect(answer.code).toBe(3);
    expect(answer.code).toBe((await leat(['run', 'broken.yaml'], folder)).code);
    expect(answer.code).toBe((await leat(['compare', 'broken.yaml', 'fed.yaml'], folder)).code);
    expect(answer.err).toMatch(/^broken\.yaml: not finished: not-finite on day 0 at oxygen@/m);
    const page = readFileSync(inFolder('broken.html'), 'utf8');
    expect(page).toContain('The run broke off on day 0 (1 Mar), not-finite: everything here ends there.');
    expect(page).toContain('No nitrogen moved: there is no flow to draw.');
    expect(page).not.toMatch(/NaN|undefined/);
  });

  it('names what is wrong with its input and writes nothing', async () => {
    const bad = await leat(['report', 'nowhere.yaml', '--out', 'bad.html'], folder);
    expect([bad.code, bad.err]).toEqual([2, 'nowhere.yaml: cannot be read: no such file or folder\n']);
    writeFileSync(
      inFolder('half.json'),
      '{"schema":"leat-run","version":1,"manifest":{},"series":{},"time":[0,1]}',
    );
    const half = await leat(['report', 'half.json', '--out', 'bad.html'], folder);
    expect([half.code, half.err]).toEqual([
      2,
      'half.json: not a whole document of leat run --json: see budget: expected record, received undefined\n',
    ]);
    expect(existsSync(inFolder('bad.html'))).toBe(false);
    expect((await leat(['report'], folder)).code).toBe(5);
    expect((await leat(['report', ...new Array<string>(7).fill('small.yaml')], folder)).code).toBe(5);
    const nowhere = await leat(['report', 'small.yaml', '--days', '2', '--out', 'no/such/r.html'], folder);
    expect([nowhere.code, nowhere.err]).toEqual([
      2,
      'no/such/r.html: cannot be written: no such file or folder\n',
    ]);
  });
});

describe('leat report --ensemble', async () => {
  const days = ['--days', '10'];
  const report = (...more: string[]) =>
    leat(['report', 'small.yaml', ...days, ...more, '--out', 'bands.html'], folder);
  const asked = [
    '--members',
    '12',
    '--seed',
    '3',
    '--of',
    'highest tan@tank',
    '--keep',
    'highest tan@tank below 5',
  ];
  const drawn = await leat(
    ['ensemble', 'small.yaml', ...days, ...asked, '--json', '--out', 'small.ensemble'],
    folder,
  );
  const other = await leat(['ensemble', 'fed.yaml', ...days, '--members', '2', '--json'], folder);
  writeFileSync(inFolder('bands.json'), drawn.out);
  writeFileSync(inFolder('other.json'), other.out);

  it('draws the bands of the document and of the kept file alike, with odds and answers', async () => {
    expect([drawn.code, other.code]).toEqual([0, 0]);
    expect(await report('--ensemble', 'bands.json')).toEqual({
      code: 0,
      out: '',
      err: 'bands.html written\n',
    });
    const page = readFileSync(inFolder('bands.html'), 'utf8');
    for (const words of [
      'How sure we are',
      '12 runs, each with ',
      'highest tan@tank below 5',
      'latin-hypercube, seed 3',
    ])
      expect(page).toContain(words);
    expect(page).not.toMatch(/NaN|undefined|Infinity|\[object/);
    expect(page.split('fill="var(--mist)"').length - 1).toBeGreaterThan(7);
    expect((await report('--ensemble', 'small.ensemble')).code).toBe(0);
    expect(readFileSync(inFolder('bands.html'), 'utf8')).toBe(page);
  });

  it('finds the run that each is of, in any order', async () => {
    const args = ['report', 'small.yaml', 'fed.yaml', ...days, '--ensemble', 'other.json', 'bands.json'];
    expect((await leat([...args, '--out', 'both.html'], folder)).code).toBe(0);
    const page = readFileSync(inFolder('both.html'), 'utf8');
    expect(page.indexOf('12 runs, each')).toBeGreaterThan(0);
    expect(page.indexOf('2 runs, each', page.indexOf('12 runs, each') + 5)).toBeGreaterThan(0);
  });

  it('stands beside the document of a run of the same scenario', async () => {
    writeFileSync(inFolder('run.json'), (await leat(['run', 'small.yaml', ...days, '--json'], folder)).out);
    expect(
      (await leat(['report', 'run.json', '--ensemble', 'bands.json', '--out', 'run.html'], folder)).code,
    ).toBe(0);
    expect(readFileSync(inFolder('run.html'), 'utf8')).toContain('12 runs, each');
  });

  it('refuses ensembles of another system, all of them at once, and writes nothing', async () => {
    const args = ['report', 'small.yaml', '--days', '9', '--ensemble', 'other.json', 'bands.json'];
    const { code, err } = await leat([...args, '--out', 'none.html'], folder);
    expect(code).toBe(2);
    expect(err).toBe(
      [
        'other.json: an ensemble of another system: "Fed double", 10 days;',
        'bands.json: an ensemble of another system: "Small system (invented)", 10 days;',
      ]
        .map(
          (head) =>
            `${head} got with small.yaml ("Small system (invented)", 9 days); ` +
            'expected one of the same file with the same --set, --tables, --days and --every\n',
        )
        .join(''),
    );
    expect(existsSync(inFolder('none.html'))).toBe(false);
  });

  it('says what a file is that is no ensemble, of all at once', async () => {
    writeFileSync(
      inFolder('run.json'),
      (await leat(['run', 'small.yaml', '--days', '2', '--json'], folder)).out,
    );
    writeFileSync(inFolder('cut.json'), drawn.out.slice(0, 5000));
    writeFileSync(inFolder('short.json'), drawn.out.replace('"median":[', '"median":[1,'));
    writeFileSync(inFolder('word.json'), drawn.out.replace(/"probability":[^,]*,/, '"probability":"often",'));
    const { code, err } = await report(
      '--ensemble',
      'run.json',
      'cut.json',
      'short.json',
      'word.json',
      'no.json',
      'small.yaml',
    );
    const wanted = 'expected a document of leat ensemble --json, or a file of leat ensemble --out';
    expect(code).toBe(2);
    expect(err.trimEnd().split('\n')).toEqual([
      `run.json: the document of one run, not of an ensemble; ${wanted}`,
      'cut.json: a document of the schema leat-ensemble that is cut short, damaged or has something behind its end; expected the file as it was written',
      expect.stringMatching(
        /^short\.json: not a whole document of leat ensemble --json: see series\.[\w-]+@\w+: expected a value for each of \d+ times, received \d+$/,
      ),
      'word.json: not a whole document of leat ensemble --json: see limits[0].probability: expected number, received string',
      'no.json: cannot be read: no such file or folder',
      `small.yaml: not an ensemble; ${wanted}`,
    ]);
    expect((await report('--ensemble', 'bands.json', 'small.ensemble')).err).toBe(
      'small.ensemble: of the same system as bands.json; give one of them\n',
    );
  });
});

describe('leat plot', () => {
  it('writes a picture that stands alone, the same bytes each time', async () => {
    const args = [
      'plot',
      'small.yaml',
      '--days',
      '10',
      '--set',
      'start.water.nitrite=0.8 mg N/L',
      '--of',
      'tan@tank',
      'nitrite@tank',
      'pH@tank',
      '--limits',
    ];
    expect((await leat([...args, '--out', 'a.svg'], folder)).code).toBe(0);
    expect((await leat([...args, '--out', 'b.svg'], folder)).code).toBe(0);
    const svg = readFileSync(inFolder('a.svg'), 'utf8');
    expect(readFileSync(inFolder('b.svg'), 'utf8')).toBe(svg);
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
    expect(svg).not.toMatch(/var\(|NaN|undefined/);
    expect(svg).toContain('nitrite, nile tilapia at most: 1');
    expect(svg).toContain('Small system (invented)');
  });

  it('writes PNG, the same bytes each time', async () => {
    const args = ['plot', 'small.yaml', '--days', '10', '--of', 'nitrate@tank', '--on', 'dark'];
    expect((await leat([...args, '--out', 'a.png'], folder)).code).toBe(0);
    expect((await leat([...args, '--out', 'b.png'], folder)).code).toBe(0);
    const png = readFileSync(inFolder('a.png'));
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1920, 1080]);
    expect(png.equals(readFileSync(inFolder('b.png')))).toBe(true);
  });

  it('names every series that there is none of, with the nearest', async () => {
    const args = [
      'plot',
      'small.yaml',
      '--days',
      '2',
      '--of',
      'tan@tnk',
      'nitrite@tank',
      'x',
      '--out',
      'c.svg',
    ];
    const { code, err } = await leat(args, folder);
    expect([code, err]).toEqual([
      2,
      '--of: no such series; got tan@tnk; expected quantity@place, such as nitrate@sump; did you mean tan@tank?\n' +
        '--of: no such series; got x; expected quantity@place, such as nitrate@sump\n',
    ]);
    expect(existsSync(inFolder('c.svg'))).toBe(false);
  });

  it('refuses an ending that it cannot write', async () => {
    const { code, err } = await leat(['plot', 'small.yaml', '--of', 'tan@tank', '--out', 'c.jpg'], folder);
    expect(code).toBe(5);
    expect(err).toContain('give a name that ends in .svg or .png');
  });
});

describe('leat run --plot', () => {
  it('draws TAN, nitrite, nitrate and pH under the summary', async () => {
    const { code, out } = await leat(['run', 'small.yaml', '--days', '10', '--plot'], folder);
    expect(code).toBe(0);
    for (const title of ['tan@tank, mg N/L', 'nitrite@tank, mg N/L', 'nitrate@tank, mg N/L', 'pH@tank'])
      expect(out.split('\n')).toContain(title);
  });

  it('draws what it is asked for, and names what there is none of', async () => {
    const { out } = await leat(
      ['run', 'small.yaml', '--days', '10', '--quiet', '--plot', 'oxygen@bed'],
      folder,
    );
    expect(out.split('\n')[1]).toBe('oxygen@bed, mg/L');
    const { code, err } = await leat(['run', 'small.yaml', '--days', '2', '--plot', 'oxigen@bed'], folder);
    expect(code).toBe(2);
    expect(err).toContain('did you mean oxygen@bed?');
  });
});
