import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { installed, quiet } from './installed.js';
import { call, emptyFolder } from './packed.js';

const required = process.env['LEAT_CI_TOOLS'] === '1';
const { folder: place, status, said, offline, why } = installed(['core', 'view', 'cli']);

const demo = ['run', 'node_modules/@leat/cli/scenarios/glasshouse.yaml', '--days', '20', '--json'];

interface Document {
  readonly time: readonly number[];
  readonly series: Readonly<Record<string, { readonly values: readonly (number | null)[] }>>;
}

/** The largest difference of two runs, of the highest value of its series. */
const furthest = (one: Document, other: Document): number =>
  Math.max(
    ...Object.entries(one.series).map(([name, { values }]) => {
      const top = Math.max(1e-9, ...values.map((value) => Math.abs(value ?? 0)));
      return Math.max(
        ...values.map((value, i) => Math.abs((value ?? 0) - (other.series[name].values[i] ?? 0)) / top),
      );
    }),
  );

describe('all packages in an empty folder', () => {
  it(`are installed by npm from their tarballs${why}`, () => {
    expect(offline && !required ? 0 : status, said).toBe(0);
  });

  it.skipIf(offline)('run the demo by npx', () => {
    const { status, stdout, stderr } = call('npx', ['--no', 'leat', ...demo.slice(0, 4)], place);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^Invented teaching glasshouse/);
    expect(call('npx', ['--no', 'leat', '--version'], place).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  for (const major of ['22', '24']) {
    it.skipIf(offline)(`say the same on Node ${major} as on this one`, (context) => {
      const there = emptyFolder();
      const got = call('npm', ['install', '--prefer-offline', ...quiet, `node@${major}`], there);
      const node = join(there, 'node_modules/node/bin/node');
      if (!existsSync(node) && !required) context.skip(`no Node ${major} to be had: ${got.stderr}`);
      expect(got.status, got.stderr).toBe(0);
      expect(call(node, ['--version'], place).stdout).toMatch(new RegExp(`^v${major}\\.`));
      const main = join(place, 'node_modules/@leat/cli/dist/main.js');
      const here = call(process.execPath, [main, ...demo], place);
      const other = call(node, [main, ...demo], place);
      expect([here.status, other.status, other.stderr]).toEqual([0, 0, here.stderr]);
      // Bytes are the same on one Node; powers and exponentials may differ by a last digit on another.
      const [mine, theirs] = [here, other].map(({ stdout }) => JSON.parse(stdout) as Document);
      expect(Object.keys(theirs.series)).toEqual(Object.keys(mine.series));
      expect(theirs.time).toEqual(mine.time);
      expect(furthest(mine, theirs)).toBeLessThan(1e-6);
    });
  }
});
