import { createParameters, fit, fitText, readFit, type SavedFit } from '@leat/core';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fitDoubts } from '../../../packages/core/src/calibration/fit-file.js';
import { fitSystem } from '../../support/fit-system.js';
import { inventedLog, inventedMap, readInvented } from '../../support/invented-log.js';
import { backyardKit } from '../../support/backyard-twin.js';

const file = fileURLToPath(new URL('../../../packages/cli/scenarios/backyard.yaml', import.meta.url));
const backyard = fitSystem('backyard');
// A tenth of what the file feeds.
const log = readInvented(
  inventedLog(backyard.read([], 40).scenario, {
    ...{ seed: 3, days: 40, columns: backyardKit, spoilt: 0 },
    feed: () => 8,
  }),
  inventedMap(backyardKit, 'tank'),
);
const found = fit({ system: backyard, log, free: ['aob.growth'], furtherStarts: 0, pastFits: 0 });
const saved = readFit(fitText(found), 'fit.json');
const opened = (given: SavedFit | undefined, set: readonly string[] = []) => {
  const texts: ReferencedFiles = {
    ...{ file, text: readFileSync(file, 'utf8'), beside: new Map<string, string>(), options: { set } },
    ...(given && { fitted: { file: 'fit.json', fit: given } }),
  };
  return openTexts(texts);
};
const films = (reading: ReturnType<typeof opened>['reading']) =>
  reading.scenario.start.map(({ aob, nob }) => [aob, nob]);

describe('films of a fitted system', () => {
  it('are in every command those that the fit grew, and it says so', () => {
    expect(saved.grownOn).toEqual([{ cohort: 'tilapia', gramsPerDay: 8 }]);
    const { reading } = opened(saved);
    const { value } = found.numbers[0];
    const same = opened(undefined, [`parameters.aob.growth=${value}`, 'fish.tilapia.ration=8 g/d']).reading;
    const own = opened(undefined, [`parameters.aob.growth=${value}`]).reading;
    expect(films(reading)).toEqual(films(same));
    expect(films(reading)).not.toEqual(films(own));
    expect(reading.scenario.fish).toEqual(own.scenario.fish);
    expect(reading.notes.join('\n')).toContain(
      "fit.json: cycled films have grown on the log's first feed: 0.",
    );
  });

  it('are not fed anew by a what-if, and are drawn with the numbers', () => {
    const more = opened(saved, ['fish.tilapia.ration=160 g/d']);
    expect(films(more.reading)).toEqual(films(opened(saved).reading));
    const { start } = more.again(createParameters(more.reading.scenario.overrides));
    expect(start.map(({ aob, nob }) => [aob, nob])).toEqual(films(more.reading));
  });

  it('stand by the ration of the file with an older fit, which says so', () => {
    const { grownOn: _, ...older } = saved;
    const { reading } = opened(older);
    expect(films(reading)).toEqual(
      films(opened(undefined, [`parameters.aob.growth=${found.numbers[0].value}`]).reading),
    );
    expect(reading.notes.join('\n')).toContain(
      'fit.json: an older fit, which does not say what its films grew on',
    );
  });

  it('stand as the file has them where its group of fish has another name by now, and it says so', () => {
    const other = { ...saved, grownOn: [{ cohort: 'carp', gramsPerDay: 8 }] };
    expect(opened(other).reading.notes.join('\n')).toContain('cannot be grown on the log');
  });
});

describe('a log of which more is known to have been done', () => {
  const changed = {
    ...log,
    added: ['{ at: 2026-03-20, change-water: { vessel: tank, share: 45 %, water: mains } }'],
  };
  const doubts = (given: SavedFit): readonly string[] =>
    fitDoubts(given, { scenario: backyard.read([]).scenario, log: changed, until: log.to });

  it('is not that of the fit: a water change that was accepted since is told', () => {
    expect(doubts(saved)).toEqual([
      expect.stringContaining('is not as it was when the fit was made: fit again'),
    ]);
    const { grownOn: _, ...older } = saved;
    expect(doubts(older)).toEqual([]);
  });
});
