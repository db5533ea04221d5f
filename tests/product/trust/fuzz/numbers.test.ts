import { writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { compileChecked } from '../../../../packages/core/src/model/compile.js';
import { budgetsOf, relativeResidual, type Budget } from '../../../../packages/core/src/result/budget.js';
import { adviceFor } from '../../../../packages/core/src/run/run.js';
import { simulate } from '../../../../packages/core/src/run/stepping.js';
import { full } from '../../../support/length.js';
import type { Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { naiveBalance } from '../naive/naive-balance.js';
import { wideNetworks } from '../../../support/random-system.js';

/** Designs that are run, a fifth of them in the short form; `npm run fuzz` asks for a tenth as many as it asks of texts and keeps the table. */
const asked = process.env['FUZZ'];
const designs = asked === undefined ? (full ? 150 : 20) : Math.ceil(Number(asked) / 10);
/** s of processor time, dozens of times what the slowest takes: only what grows without bound comes here. */
const endless = 60;

/**
 * What sums of the amounts in a budget cannot tell from nothing: 16 units in the last place of them all. Charge is the case: 94 kg
 * of fish in a litre make 7 eq of ammonium and 7 eq of alkalinity where 0.00001 eq came in, and 1e-14 eq is then 1e-9 of throughput.
 */
const lastPlace = ({ stores, throughput }: Budget): number =>
  16 * Number.EPSILON * stores.reduce((sum, { amount }) => sum + Math.abs(amount), throughput);

/** The shortest time in which a pump of a design takes the water between its restart and its inlet, s. */
const shortestTurn = ({ pumps, flows }: Scenario): number =>
  Math.min(
    ...pumps.map(({ name, inlet, restart }) => {
      const rates = flows.map((flow) => (flow.kind === 'pumped' && flow.pump === name ? flow.rate : 0));
      return (86_400 * (restart - inlet)) / rates.reduce((sum, rate) => sum + rate, 0);
    }),
  );
/** A run is called chattering from so many switches in a day: a pump that does so turns round within, s. */
const chatter = 86_400 / 2000;

it(
  'any design runs to its end or ends by a name, and its budgets close either way, kept twice',
  () => {
    const ends = new Map<string, number>();
    const early: string[] = [];
    let [slowest, farthest, time, inLastPlace] = [0, 0, 0, 0];
    fc.assert(
      fc.property(wideNetworks, (scenario) => {
        const began = process.cpuUsage();
        // Unsound designs too: that the check refuses them is tested elsewhere.
        const run = simulate(compileChecked(scenario, createParameters(), { closureDraws: 0 }));
        const { user, system } = process.cpuUsage(began);
        const seconds = (user + system) / 1e6;
        const { kind } = run.outcome;
        expect(kind === 'done' || adviceFor(kind) !== '', kind).toBe(true);
        for (const budget of budgetsOf(run)) {
          const naive = naiveBalance(run, budget);
          const said = `${budget.quantity} of ${budget.place}, by the second bookkeeping`;
          const alike = 1e-9 * budget.throughput + 1e-12 * naive.size;
          expect(Math.abs(naive.gained - (budget.in - budget.out)), said).toBeLessThanOrEqual(alike);
          expect(Math.abs(naive.stored - budget.stored), said).toBeLessThanOrEqual(alike);
          const share = relativeResidual(budget);
          if (share < 1e-9) farthest = Math.max(farthest, share);
          else {
            inLastPlace++;
            const where = `${budget.quantity} of ${budget.place} after ${kind}`;
            expect(Math.abs(budget.residual), where).toBeLessThan(lastPlace(budget));
          }
        }
        expect(seconds).toBeLessThan(endless);
        ends.set(kind, (ends.get(kind) ?? 0) + 1);
        // An amount falls below zero only where the design begins with one: the check refuses that, and this run leaves it out.
        if (kind === 'negative-state')
          expect(scenario.start.some(({ water }) => Object.values(water).some((each) => each < 0))).toBe(
            true,
          );
        // Nothing is called chattering but a pump whose two levels are as near as that.
        const turn = shortestTurn(scenario);
        if (kind === 'chattering') expect(turn).toBeLessThan(chatter);
        const where =
          kind === 'chattering'
            ? `a pump from restart to inlet in ${turn.toPrecision(2)} s`
            : (run.outcome.worst ?? '');
        if (kind !== 'done') early.push(`| ${kind} | ${run.outcome.time.toPrecision(3)} | ${where} |`);
        [slowest, time] = [Math.max(slowest, seconds), time + seconds];
      }),
      { seed: 20252, numRuns: designs },
    );
    expect([...ends.values()].reduce((sum, count) => sum + count, 0)).toBe(designs);
    if (asked === undefined) return;
    const lines = [
      '# Fuzzing of numbers',
      '',
      `Made by \`FUZZ=${asked} npm run fuzz\`: networks of two to six vessels whose numbers are drawn over many powers of ten (a jar to a`,
      'farm, spring water to sludge), run for three days. A run ends well or by a name; budgets close in all, to 1e-9 of throughput,',
      'or, where far more is held than came in and cancels (charge), to the last places of what is held; a second bookkeeping, from',
      'within, says the same. `negative-state` ends only designs whose start has an amount below zero, which the check refuses.',
      '',
      '| designs | s | slowest, ms | farthest residual below 1e-9 of throughput | budgets closed to the last places only |',
      '| --- | --- | --- | --- | --- |',
      `| ${designs} | ${time.toFixed(0)} | ${(slowest * 1000).toFixed(0)} | ${farthest.toExponential(1)} | ${inLastPlace} |`,
      '',
      '| end | designs |',
      '| --- | --- |',
      ...[...ends].sort().map(([kind, count]) => `| ${kind} | ${count} |`),
      ...(early.length === 0
        ? []
        : ['', '| ended early | day | where |', '| --- | --- | --- |', ...early.sort()]),
    ];
    writeFileSync(new URL('../FUZZ-NUMBERS.md', import.meta.url), `${lines.join('\n')}\n`);
  },
  asked === undefined ? undefined : 4 * 3600 * 1000,
);
