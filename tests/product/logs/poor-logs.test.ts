import { fit } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { fitSystem } from '../../support/fit-system.js';
import { backyardKit } from '../../support/backyard-twin.js';
import { messageOf } from '../../support/message-of.js';
import { inventedMap, readInvented } from '../../support/invented-log.js';

const header = 'Date,ammonia tank,nitrite tank,nitrate tank,pH tank,alkalinity tank,Feed,Temp';
const map = inventedMap(backyardKit, 'tank');
const fitTo = (rows: readonly string[], free = ['aob.growth']) =>
  fit({
    system: fitSystem('backyard'),
    log: readInvented(`${[header, ...rows].join('\n')}\n`, map),
    free,
    furtherStarts: 0,
  });

describe('a log that tells little', () => {
  it('an empty log is a fault', () => {
    expect(messageOf(() => fitTo([]))).toBe('log.csv: an empty log: no row has a date');
  });

  it('a log of another year is a fault that names both times', () => {
    expect(messageOf(() => fitTo(['13/03/2019,0.5,,,,,,', '14/03/2019,0.5,,,,,,']))).toBe(
      'log.csv: the log lies outside the run of the system file: nothing in it can be held against the model; got 2019-03-13 to 2019-03-14; expected dates in the 120 days from start-date 2026-03-01',
    );
  });

  it('no reading of this system at all is a fault', () => {
    expect(messageOf(() => fitTo(['13/03/2026,,,,,,70,24', '14/03/2026,,,,,,70,24']))).toContain(
      'no reading in the log is of this system and within its run: there is nothing to fit to',
    );
  });

  it('no readings of nitrogen are warned of', () => {
    const { notes } = fitTo(['13/03/2026,,,,7.4,,,', '14/03/2026,,,,7.4,,,']);
    expect(notes).toContain(
      'warning: no reading of ammonia, nitrite or nitrate: the log tells nothing of how nitrogen turns over',
    );
  });

  it('readings that are all zero are warned of, and only bound', () => {
    const { notes, numbers } = fitTo(['13/03/2026,0,,,,,,', '14/03/2026,0,,,,,,', '16/03/2026,0,,,,,,']);
    expect(notes).toContain(
      'warning: all 3 readings of ammonia are zero or below what the kit shows: they only bound it',
    );
    expect(numbers[0].deviation).toBeGreaterThan(0.5);
  });

  it('a number that nothing informs stays at its prior, and is told', () => {
    const { notes, numbers } = fitTo(
      ['13/03/2026,0.5,,,,,,', '14/03/2026,0.25,,,,,,'],
      ['aob.growth', 'fish.rainbow-trout.energy-retention'],
    );
    expect(notes).toContain(
      'warning: nothing in this system reads fish.rainbow-trout.energy-retention: it stays at its prior',
    );
    expect(numbers[1]).toMatchObject({ verdict: 'stays', deviate: 0 });
    expect(numbers[1].deviation).toBeCloseTo(1, 10);
  });

  it('a start value in another unit is a fault, not taken for ours', () => {
    const told = messageOf(() => fitTo(['13/03/2026,0.5,,,,,,'], ['start.nitrate=10..90 mg/L as NO3']));
    expect(told).toBe(
      '--free: another unit than water is counted in here; got start.nitrate=... mg/L as NO3; expected g/m3',
    );
  });

  it('a last date before the log is a fault that names its dates', () => {
    const log = readInvented(`${header}\n13/03/2026,0.5,,,,,,\n`, map);
    const asked = { system: fitSystem('backyard'), log, free: ['aob.growth'], until: '2026-02-01' };
    expect(messageOf(() => fit(asked))).toBe(
      'log.csv: no row of the log is left up to the last date that counts; got 2026-02-01; expected a date from 2026-03-13 to 2026-03-13',
    );
  });

  it('every free number that is none is told at once', () => {
    const told = messageOf(() =>
      fitTo(['13/03/2026,0.5,,,,,,'], ['aob.grow', 'start.nitrat', 'start.nitrate@tnak', 'aob.growth=3..1']),
    );
    expect(told.split('\n')).toHaveLength(4);
    expect(told).toContain('did you mean aob.growth?');
    expect(told).toContain('did you mean start.nitrate?');
    expect(told).toContain('did you mean tank?');
    expect(told).toContain('no range');
  });
});
