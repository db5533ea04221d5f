import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../cli/leat.js';

const fed = 'include: small.yaml\ntitle: Fed double\nfish: { tilapia: { ration: 3 %/d } }\n';
const folder = folderWith({ 'fed.yaml': fed });
const inFolder = (name: string): string => join(folder, name);

describe('leat report', () => {
  it('is in the help', () => {
    expect(leat(['--help'], folder).out).toContain('report [options] <files...>');
  });

  it('writes report.html, or where it is told to', () => {
    const { code, out, err } = leat(['report', 'small.yaml', '--days', '10'], folder);
    expect([code, out, err]).toEqual([0, '', 'report.html written\n']);
    expect(readFileSync(inFolder('report.html'), 'utf8')).toMatch(/^<!doctype html>/i);
    const two = leat(['report', 'small.yaml', 'fed.yaml', '--days', '10', '--out', 'two.html'], folder);
    expect(two.code).toBe(0);
    expect(readFileSync(inFolder('two.html'), 'utf8')).toContain('How the runs differ, and why');
  });

  it('takes documents of leat run --json, and says what they cannot tell', () => {
    writeFileSync(inFolder('saved.json'), leat(['run', 'small.yaml', '--json', '--days', '10'], folder).out);
    const { code } = leat(['report', 'saved.json', 'fed.yaml', '--days', '10', '--out', 's.html'], folder);
    expect(code).toBe(0);
    const page = readFileSync(inFolder('s.html'), 'utf8');
    for (const words of [
      'a saved document holds no vessels and flows to draw',
      'a saved document cannot be asked why',
      'from a saved document',
    ])
      expect(page).toContain(words);
  });

  it('names what is wrong with its input and writes nothing', () => {
    const bad = leat(['report', 'nowhere.yaml', '--out', 'bad.html'], folder);
    expect([bad.code, bad.err]).toEqual([2, 'nowhere.yaml: cannot be read: no such file or folder\n']);
    writeFileSync(inFolder('half.json'), '{"manifest":{},"series":{},"time":[0,1]}');
    const half = leat(['report', 'half.json', '--out', 'bad.html'], folder);
    expect([half.code, half.err]).toEqual([
      2,
      'half.json: not a whole document of leat run --json: see budget\n',
    ]);
    expect(existsSync(inFolder('bad.html'))).toBe(false);
    expect(leat(['report'], folder).code).toBe(5);
    expect(leat(['report', ...new Array<string>(7).fill('small.yaml')], folder).code).toBe(5);
    const nowhere = leat(['report', 'small.yaml', '--days', '2', '--out', 'no/such/r.html'], folder);
    expect([nowhere.code, nowhere.err]).toEqual([
      2,
      'no/such/r.html: cannot be written: no such file or folder\n',
    ]);
  });
});

describe('leat plot', () => {
  it('writes a picture that stands alone, the same bytes each time', () => {
    const args = [
      'plot',
      'small.yaml',
      '--days',
      '10',
      '--of',
      'tan@tank',
      'nitrite@tank',
      'pH@tank',
      '--limits',
    ];
    expect(leat([...args, '--out', 'a.svg'], folder).code).toBe(0);
    expect(leat([...args, '--out', 'b.svg'], folder).code).toBe(0);
    const svg = readFileSync(inFolder('a.svg'), 'utf8');
    expect(readFileSync(inFolder('b.svg'), 'utf8')).toBe(svg);
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
    expect(svg).not.toMatch(/var\(|NaN|undefined/);
    expect(svg).toContain('nitrite, most for nile tilapia: 1');
    expect(svg).toContain('Small system (invented)');
  });

  it('writes PNG, the same bytes each time', () => {
    const args = ['plot', 'small.yaml', '--days', '10', '--of', 'nitrate@tank', '--on', 'dark'];
    expect(leat([...args, '--out', 'a.png'], folder).code).toBe(0);
    expect(leat([...args, '--out', 'b.png'], folder).code).toBe(0);
    const png = readFileSync(inFolder('a.png'));
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1920, 1080]);
    expect(png.equals(readFileSync(inFolder('b.png')))).toBe(true);
  });

  it('names every series that there is none of, with the nearest', () => {
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
    const { code, err } = leat(args, folder);
    expect([code, err]).toEqual([
      2,
      '--of: no such series; got tan@tnk; did you mean tan@tank?\n--of: no such series; got x\n',
    ]);
    expect(existsSync(inFolder('c.svg'))).toBe(false);
  });

  it('refuses an ending that it cannot write', () => {
    const { code, err } = leat(['plot', 'small.yaml', '--of', 'tan@tank', '--out', 'c.jpg'], folder);
    expect(code).toBe(5);
    expect(err).toContain('give a name that ends in .svg or .png');
  });
});

describe('leat run --plot', () => {
  it('draws TAN, nitrite, nitrate and pH under the summary', () => {
    const { code, out } = leat(['run', 'small.yaml', '--days', '10', '--plot'], folder);
    expect(code).toBe(0);
    for (const title of ['tan@tank, mg N/L', 'nitrite@tank, mg N/L', 'nitrate@tank, mg N/L', 'pH@tank'])
      expect(out.split('\n')).toContain(title);
  });

  it('draws what it is asked for, and names what there is none of', () => {
    const { out } = leat(['run', 'small.yaml', '--days', '10', '--quiet', '--plot', 'oxygen@bed'], folder);
    expect(out.split('\n')[1]).toBe('oxygen@bed, mg/L');
    const { code, err } = leat(['run', 'small.yaml', '--days', '2', '--plot', 'oxigen@bed'], folder);
    expect(code).toBe(2);
    expect(err).toContain('did you mean oxygen@bed?');
  });
});
