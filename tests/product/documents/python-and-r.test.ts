import { spawnSync } from 'node:child_process';
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { asyncBufferFromFile, parquetMetadataAsync, parquetReadObjects } from 'hyparquet';
import { beforeAll, describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';
import { root } from '../packages/packed.js';
import { at } from './documents.js';

const text = at('packages/cli/docs/python-and-r.md');
const blocks = (language: string): readonly string[] =>
  [...text.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, code]) => code);

/** The Python of Debian, which its package of pandas is for, before another that may stand in the path. */
const interpreter =
  ['/usr/bin/python3', 'python3'].find((name) => spawnSync(name, ['-c', 'import pandas']).status === 0) ??
  'python3';
const python = (code: string, cwd?: string) =>
  spawnSync(interpreter, ['-c', code], { encoding: 'utf8', ...(cwd !== undefined && { cwd }) });
const hasPandas = python('import pandas').status === 0;
const hasPython = python('import json').status === 0;
const required = process.env['LEAT_CI_TOOLS'] === '1';

const folder = folderWith();

describe('the page on Python and R', () => {
  beforeAll(async () => {
    copyFileSync(join(root, 'packages/cli/scenarios/backyard.yaml'), join(folder, 'backyard.yaml'));
    const [commands] = blocks('sh');
    for (const line of commands.trim().split('\n')) {
      const [call, into] = line.replace(/^leat /, '').split(' > ');
      const { code, out } = await leat(call.split(' '), folder);
      expect(code).toBe(0);
      if (into !== undefined) writeFileSync(join(folder, into), out);
    }
  });

  it('names columns that there are', () => {
    const head = readFileSync(join(folder, 'course.csv'), 'utf8').split('\n')[0].split(',');
    expect(head.slice(0, 3)).toEqual(['time_d', 'date', 'tan_tank_mg_N_per_L']);
    expect(head.filter((name) => !/^[A-Za-z][A-Za-z0-9_]*$/.test(name))).toEqual([]);
    expect(new Set(head).size).toBe(head.length);
  });

  it('has programs for pandas that run', (context) => {
    if (!hasPandas && !required) context.skip('python3 with pandas is not installed');
    const [course] = blocks('python');
    const { stdout, stderr } = python(course, folder);
    expect(stderr).toBe('');
    expect(stdout).toMatch(/^\d+\.\d+\n31\n$/);
  });

  it('makes the balance again from the JSON', (context) => {
    if (!hasPython && !required) context.skip('python3 is not installed');
    const [, balance] = blocks('python');
    expect(python(balance, folder)).toMatchObject({ stdout: 'True\n', stderr: '' });
  });

  it('says of the Parquet file what stands in it', async () => {
    const file = await asyncBufferFromFile(join(folder, 'long.parquet'));
    const metadata = await parquetMetadataAsync(file);
    const about = new Map(metadata.key_value_metadata?.map(({ key, value }) => [key, value]));
    const columns = JSON.parse(about.get('leat.columns') ?? '') as readonly unknown[];
    expect(columns[0]).toEqual({ column: 'tan_tank_mg_N_per_L', series: 'tan@tank', unit: 'mg N/L' });
    expect(about.get('leat.start-date')).toMatch(/^\d{4}-\d\d-\d\d$/);
    const rows = await parquetReadObjects({ file });
    const long = readFileSync(join(folder, 'long.csv'), 'utf8').trimEnd().split('\n').slice(1);
    expect(rows).toHaveLength(long.length);
    const [time, date, quantity, place, unit, value] = long[40].split(',');
    expect(rows[40]).toEqual({
      ...{ time_d: Number(time), date: new Date(`${date}T00:00Z`), quantity, place, unit },
      value: Number(value),
    });
  });
});
