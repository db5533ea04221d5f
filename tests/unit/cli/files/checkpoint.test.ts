import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openCheckpoint, type CheckpointTask } from '../../../../packages/cli/src/files/checkpoint.js';
import { openKept } from '../../../../packages/cli/src/files/outputs.js';

const task: CheckpointTask<number> = {
  command: 'counting',
  asked: { '--to': '3' },
  from: { to: 3 },
  isOutput: (value): value is number => typeof value === 'number',
};

describe('work that is kept', () => {
  it('names a file of its own where none was named, and goes on from it', () => {
    const folder = mkdtempSync(join(tmpdir(), 'leat-'));
    const work = openCheckpoint(task, {});
    expect(work.stop(join(folder, 'demo'))).toBeUndefined();
    expect(readdirSync(folder)).toEqual([]);
    work.put('ones', 2, Number.NaN);
    work.put('ones', 0, 5);
    work.put('twos', 0, 7);
    const path = work.stop(join(folder, 'demo')) ?? '';
    expect(path).toMatch(/demo-[0-9a-f]{8}\.counting$/);
    const on = openCheckpoint(task, { resume: path });
    expect(on.size()).toBe(3);
    expect([on.get('ones', 0), on.get('ones', 1), on.get('ones', 2), on.get('twos', 0)]).toEqual([
      5,
      undefined,
      Number.NaN,
      7,
    ]);
    const others = { ...task, asked: { '--to': '4' }, from: { to: 4 } };
    expect(() => openCheckpoint(others, { resume: path })).toThrow(
      'of other work (kept / asked):\n  --to: 3 / 4',
    );
    expect(() => openCheckpoint({ ...task, command: 'adding' }, { resume: path })).toThrow(
      'not a file of leat adding --out',
    );
  });

  it('keeps nothing at the end where no file was named', () => {
    const folder = mkdtempSync(join(tmpdir(), 'leat-'));
    const { kept } = openKept({ out: join(folder, 'named') }, 'size');
    for (const options of [{}, { kept }]) {
      const work = openCheckpoint(task, options);
      work.put('ones', 0, 1);
      work.finish();
    }
    expect(readdirSync(folder)).toEqual(['named']);
  });
});
