import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const over = (display: string): string => `include: small.yaml\ndays: 5\ndisplay: ${display}\n`;
const folder = folderWith({
  'us.yaml': over('{ units: [us, dKH] }'),
  'plain.yaml': over('{}'),
  'told.yaml': over('{ language: es, units: us }'),
  'bad-language.yaml': over('{ language: sp }'),
  'bad-units.yaml': over('{ units: [metricc] }'),
});

describe('how a run is told', () => {
  it('is Spanish with a decimal comma where --language es is given', async () => {
    const { out, code } = await leat(['run', 'small.yaml', '--days', '5', '--language', 'es'], folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^Peces: /m);
    expect(out).toMatch(/^nitrato +\S+ +mg N\/L +\d+(,\d+)? /m);
    expect(out).not.toMatch(/\b(limits|nitrogen|lowest|events|day|water)\b/);
  });

  it('is in the units of --units, in place of those of the file', async () => {
    const own = await leat(['run', 'us.yaml'], folder);
    expect(own.out).toMatch(/^alkalinity +\S+ +dKH /m);
    expect(own.out).toMatch(/^water +\S+ +gal /m);
    const { out } = await leat(['run', 'us.yaml', '--units', 'mg/L as NO3'], folder);
    expect(out).toMatch(/^nitrate +\S+ +mg\/L as NO3 /m);
    expect(out).toMatch(/^water +\S+ +m3 /m);
  });

  it('leaves JSON as it is, and the hash of the system', async () => {
    interface Document {
      readonly manifest: { readonly scenario: string };
      readonly series: object;
      readonly verdict: object;
    }
    const read = async (...args: string[]): Promise<Document> =>
      JSON.parse((await leat(['run', ...args, '--json'], folder)).out) as Document;
    const [plain, told] = [await read('plain.yaml'), await read('told.yaml', '--units', 'us')];
    expect(told.series).toEqual(plain.series);
    expect(told.verdict).toEqual(plain.verdict);
    expect(told.manifest.scenario).toBe(plain.manifest.scenario);
  });

  it('is a report in the language, which the next one replaces as any other', async () => {
    const args = ['report', 'small.yaml', '--days', '5', '--language', 'es', '--out', 'informe.html'];
    for (const time of ['first', 'again']) {
      const { code } = await leat(args, folder);
      expect([time, code]).toEqual([time, 0]);
      expect(readFileSync(join(folder, 'informe.html'), 'utf8')).toContain('<html lang="es">');
    }
  });

  it('faults every unit that is none with the nearest name, of the option and of the file', async () => {
    const option = await leat(['run', 'small.yaml', '--units', 'uss,mg/L', '--units', 'dKHH'], folder);
    expect(option.code).toBe(2);
    expect(option.err).toMatch(/--units: .*got uss; .*did you mean us\?/);
    expect(option.err).toMatch(/--units: ambiguous unit/);
    expect(option.err).toMatch(/got dKHH; .*did you mean dKH\?/);
    const language = await leat(['check', 'bad-language.yaml'], folder);
    expect(language.code).toBe(2);
    expect(language.err).toMatch(/bad-language\.yaml:3:\d+: display\.language/);
    const units = await leat(['check', 'bad-units.yaml'], folder);
    expect(units.err).toMatch(/display\.units: .*got metricc; .*did you mean metric\?/);
  });
});
