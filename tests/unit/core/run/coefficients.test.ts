import { compileModel, createParameters, createRandom } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { feedKey } from '../../../../packages/core/src/model/instance.js';
import type { Model } from '../../../../packages/core/src/model/model.js';
import { openRates } from '../../../../packages/core/src/model/rates.js';
import { scopeTo } from '../../../../packages/core/src/model/scope.js';
import { conditionsAt, openCoefficients, openDay } from '../../../../packages/core/src/run/forcing.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

/** Coefficients of every instance as its law gives them, from numbers that nobody has asked for yet. */
function foundAnew(
  model: Model,
  day: ReturnType<typeof openDay>,
  { aeration, inflow, rise, offers, feeds }: Setting,
): readonly (readonly number[])[] {
  return model.instances.map(({ process, vessel, cohort, batch, feed, values }) => {
    const fed = cohort >= 0 && (feed === undefined || feed === feeds[cohort]);
    const offer = fed ? offers[cohort] : { fed: 0, share: 0 };
    const at = conditionsAt(
      ...([model, vessel, day, aeration[vessel], inflow[vessel], batch, offer] as const),
      undefined,
      rise[vessel],
    );
    const asked = scopeTo({ value: (id) => values.value(id), has: () => true }, {});
    return process.coefficients(asked, at);
  });
}

interface Setting {
  readonly aeration: Float64Array;
  readonly inflow: Float64Array;
  readonly rise: Float64Array;
  readonly offers: readonly { readonly fed: number; readonly share: number; readonly pace?: number }[];
  readonly feeds: readonly string[];
}

describe('the coefficients of a segment', () => {
  it('are those that each law gives at each place, to the bit, whatever has changed since the last', () => {
    const scenario = shippedScenario('glasshouse');
    const model = compileModel(scenario, createParameters(scenario.overrides));
    const { regime } = openRates(model);
    const refresh = openCoefficients(model, regime);
    const day = openDay(model, 0);
    const count = model.layout.vessels.length;
    const setting = {
      ...{ aeration: new Float64Array(count).fill(50), inflow: new Float64Array(count).fill(3) },
      ...{ rise: regime.slope, offers: scenario.fish.map(() => ({ fed: 100, share: 0 })) },
      feeds: scenario.fish.map(({ feed }) => feedKey(feed)),
    };
    const random = createRandom(5);
    const places: readonly Float64Array[] = [
      ...[day.temperature, day.air, day.ionic, day.light, day.bearing],
      ...[setting.aeration, setting.inflow, setting.rise],
    ];
    let changed = 0;
    let before: readonly (readonly number[])[] = [];
    for (let segment = 0; segment < 60; segment++) {
      const values = places[Math.floor(random() * places.length)];
      if (segment > 0 && random() < 0.8) values[Math.floor(random() * values.length)] = 0.1 + 0.8 * random();
      if (random() < 0.2) setting.offers[0] = { fed: 200 * random(), share: 0.01 * random() };
      refresh(day, setting.aeration, setting.inflow, setting.offers, setting.feeds, []);
      const found = regime.coefficients.map((each) => [...each]);
      expect(found).toEqual(foundAnew(model, day, setting));
      changed += found.filter((each, j) => (before[j] ?? each).some((value, i) => value !== each[i])).length;
      before = found;
    }
    expect(changed).toBeGreaterThan(200);
  });
});

describe('numbers as seen from a place', () => {
  it('are those of their ids in whatever order they are asked for, each looked up once', () => {
    const asked: string[] = [];
    const ids = ['a.x', 'b.x', 'c.x', 'd.x'];
    const value = (id: string): number => {
      asked.push(id);
      return ids.indexOf(id);
    };
    const seen = scopeTo({ value, has: () => true }, {});
    const random = createRandom(3);
    for (let i = 0; i < 300; i++) {
      const id = ids[Math.floor(random() * ids.length)];
      expect(seen.value(id)).toBe(ids.indexOf(id));
    }
    expect([...asked].sort()).toEqual(ids);
  });
});
