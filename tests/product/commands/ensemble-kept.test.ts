import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatSignalled } from '../../support/leat.js';

const folder = folderWith({ 'short.yaml': 'include: small.yaml\ndays: 4\n' });

describe('leat ensemble that is broken off', async () => {
  const many = ['ensemble', 'short.yaml', '--members', '24', '--workers', '1', '--json'];
  const unbroken = await leat(many, folder);

  it('by kill -9 goes on from what was kept, to the same bytes', async () => {
    const out = ['--out', 'killed.ensemble'];
    expect(leatSignalled([...many, ...out], folder, 'SIGKILL', 'kept killed.ensemble').code).toBe(137);
    const kept = (
      JSON.parse((await leat(['merge', 'killed.ensemble', '--json'], folder)).out) as { ran: number }
    ).ran;
    expect(kept).toBeGreaterThan(0);
    expect(kept).toBeLessThan(24);
    const resumed = await leat([...many, '--resume', 'killed.ensemble'], folder);
    expect([resumed.code, resumed.out]).toEqual([0, unbroken.out]);
  });

  it('by Ctrl-C keeps what is done, says how to go on and leaves with 130', async () => {
    const { code, err } = leatSignalled(many, folder, 'SIGINT', 'tasks 9');
    expect(code).toBe(130);
    const match =
      /^(\d+) of 24 members are kept in (short-[0-9a-f]{8}\.ensemble): the same command with --resume (\S+) goes on\n$/.exec(
        err,
      );
    expect(match, err).not.toBeNull();
    const resumed = await leat([...many, '--resume', match?.[2] ?? ''], folder);
    expect([resumed.code, resumed.out]).toEqual([0, unbroken.out]);
  });
});
