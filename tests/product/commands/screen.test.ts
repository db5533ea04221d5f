import { afterEach, describe, expect, it } from 'vitest';
import { screenWidth } from '../../../packages/cli/src/terminal/width.js';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({
  'cut.yaml': 'include: small.yaml\nactions: [{ at: 4 d, for: 12 h, power-cut: all }]\n',
});
const before = process.env['LEAT_WIDTH'];
afterEach(() => {
  if (before === undefined) delete process.env['LEAT_WIDTH'];
  else process.env['LEAT_WIDTH'] = before;
});
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

describe('the width of a screen', () => {
  it('is that of the terminal from 80 to 120, 100 elsewhere', () => {
    expect(screenWidth({ isTTY: true, columns: 97 }, {})).toBe(97);
    expect(screenWidth({ isTTY: true, columns: 60 }, {})).toBe(80);
    expect(screenWidth({ isTTY: true, columns: 300 }, {})).toBe(120);
    expect(screenWidth({ columns: 300 }, {})).toBe(100);
    expect(screenWidth({}, { LEAT_WIDTH: '110' })).toBe(110);
  });

  it.each([
    [80, ['run', 'cut.yaml']],
    [120, ['run', 'cut.yaml']],
    [80, ['run', 'cut.yaml', '--detail']],
    [80, ['steady', 'small.yaml']],
    [80, ['compare', 'small.yaml', 'cut.yaml']],
    [80, ['why', 'small.yaml', 'cut.yaml', '--of', 'nitrate@sump']],
  ])('of %i letters holds %j, and no source or event is cut', async (letters, args) => {
    process.env['LEAT_WIDTH'] = String(letters);
    const { out } = await leat([...args, '--days', '9'], folder);
    expect(widest(out)).toBeLessThanOrEqual(letters);
    expect(out).not.toContain('…');
    expect(out.includes('Jacobians')).toBe(args.includes('--detail'));
  });
});
