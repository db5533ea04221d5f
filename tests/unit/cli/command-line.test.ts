import { describe, expect, it } from 'vitest';
import { InputError } from '@leat/core';
import { explain } from '../../../packages/cli/src/command-line.js';
import { FileError } from '../../../packages/cli/src/files/read.js';

describe('explain', () => {
  it('says the faults of bad input as they are: 2', () => {
    const error = new InputError([
      { problem: 'missing', key: 'days' },
      { problem: 'missing', key: 'reservoir' },
    ]);
    expect(explain(error, false)).toEqual({ text: 'days: missing\nreservoir: missing', code: 2 });
    expect(explain(new FileError('a.csv: cannot be written'), true).code).toBe(2);
  });

  it('calls anything else a fault of ours: 70, with the stack only for debugging', () => {
    const error = new TypeError('x is not a function');
    const { text, code } = explain(error, false);
    expect(code).toBe(70);
    expect(text).toMatch(/^leat: x is not a function\n/);
    expect(text).not.toContain('command-line.test');
    expect(explain(error, true).text).toContain('command-line.test');
    expect(explain('thrown text', false).code).toBe(70);
  });
});
