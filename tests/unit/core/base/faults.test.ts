import { describe, expect, it } from 'vitest';
import { describeFault, InputError, type Fault } from '@leat/core';

const full: Fault = {
  file: 'farm.yaml',
  line: 12,
  column: 5,
  key: 'vessels.tank-1.volume',
  problem: 'wrong dimension',
  got: '"3 m2"',
  expected: 'a volume such as "1.8 m3"',
  nearest: '"3 m3"',
};

describe('describeFault', () => {
  it('says where, which key, what is wrong, what came, what was expected and the nearest right name', () => {
    expect(describeFault(full)).toBe(
      'farm.yaml:12:5: vessels.tank-1.volume: wrong dimension; got "3 m2"; ' +
        'expected a volume such as "1.8 m3"; did you mean "3 m3"?',
    );
  });

  it('says only the problem when nothing else is known', () => {
    expect(describeFault({ problem: 'the file is empty' })).toBe('the file is empty');
  });

  it.each<[string, Fault, string]>([
    ['a file alone', { file: 'farm.yaml', problem: 'not found' }, 'farm.yaml: not found'],
    ['no column', { file: 'farm.yaml', line: 3, problem: 'tab used' }, 'farm.yaml:3: tab used'],
    ['a key alone', { key: 'run.days', problem: 'missing' }, 'run.days: missing'],
    ['what came alone', { problem: 'unknown crop', got: 'letuce' }, 'unknown crop; got letuce'],
    [
      'a nearest name alone',
      { problem: 'unknown crop', nearest: 'lettuce' },
      'unknown crop; did you mean lettuce?',
    ],
  ])('leaves out what is not known: %s', (_, fault, text) => {
    expect(describeFault(fault)).toBe(text);
  });
});

describe('InputError', () => {
  it('carries every fault and says each on its own line', () => {
    const faults = [full, { problem: 'the run has no length', key: 'run.days' }];
    const error = new InputError(faults);
    expect(error.faults).toEqual(faults);
    expect(error.name).toBe('InputError');
    expect(error.message.split('\n')).toEqual(faults.map(describeFault));
  });

  it('says a fault that repeats in rows of a list once, with how often, where and what came', () => {
    const rows = Array.from({ length: 14 }, (_, row): Fault => ({
      ...{ file: 'farm.yaml', line: 5 + row, column: 3, key: `actions[${row}].dose.mas` },
      ...{ problem: 'unknown key', nearest: 'mass' },
    }));
    const error = new InputError([...rows, full]);
    expect(error.faults).toHaveLength(15);
    expect(error.message.split('\n')).toEqual([
      'farm.yaml:5:3: actions[0].dose.mas: unknown key, 14 times: lines 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16 ...; did you mean mass?',
      describeFault(full),
    ]);
    expect(new InputError(rows.slice(0, 2)).message.split('\n')).toHaveLength(2);
  });
});
