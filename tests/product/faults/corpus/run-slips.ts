import { readdirSync } from 'node:fs';
import { expect } from 'vitest';
import { edited, type Slip } from './slip.js';
import { folderWith, leat } from '../../../support/leat.js';

/** A valid set of files, which of them is faulty, and the command that reads it. */
export interface Kind {
  readonly files: Readonly<Record<string, string>>;
  readonly faulty: string;
  readonly args: readonly string[];
  /** Whether single odd values are told in the result, and the rest is read. */
  readonly forgiving?: boolean;
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
}

const odd = /^(?:look:|odd values:| *row \d|no )/;

/** Runs each slip and gives every message as one text: name, exit code, and the lines said. */
export async function toldOf(kind: Kind, slips: readonly Slip[]): Promise<string> {
  const parts: string[] = [];
  for (const { name, edits = [], text, files = {}, args = [], code = 2 } of slips) {
    const faulty = text ?? edited(kind.files[kind.faulty], edits);
    const folder = folderWith({ ...kind.files, ...files, [kind.faulty]: faulty });
    const before = filesIn(folder);
    const called = await leat([...kind.args, ...args], folder);
    expect(called.err, name).not.toMatch(/^ +at |fault of leat|\[object|undefined/m);
    expect(filesIn(folder), name).toEqual(before);
    const forgiven = kind.forgiving === true && called.code === 0;
    const told = forgiven ? called.out.split('\n').filter((line) => odd.test(line)) : [];
    if (!forgiven) expect([called.code, called.out], `${name}: ${called.err}`).toEqual([code, '']);
    const said = [...told.map((line) => `${line.trimEnd()}\n`), called.err].join('');
    expect(said, name).not.toBe('');
    parts.push(`# ${name} (exit ${called.code})\n${said}`);
  }
  return parts.join('\n');
}
