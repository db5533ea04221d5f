import { budgetOf, type Run } from '@leat/core';
import { type Lesson, runText } from '@leat/view/lesson';
import { nitrogenShares } from '../support/nitrogen-shares.js';
import { smallSystem } from '../support/small-system.js';
import { placed, type Words } from '../support/words.js';
import type { words as english } from '../text/en/02-reading-a-nitrogen-balance.js';

const GAS = 'nitrogen gas';

const gasOf = (run: Run): number => nitrogenShares(run).find(({ name }) => name === GAS)?.amount ?? 0;

const fedIn = (run: Run): number =>
  budgetOf(run, 'nitrogen', 'system')
    .lines.filter(({ beyond }) => beyond === 'feed')
    .reduce((sum, { amount }) => sum + amount, 0);

export const balance: Lesson<Words<typeof english>> = {
  id: '02-reading-a-nitrogen-balance',
  open(kit, words) {
    const { labels, file } = words;
    const at = placed(words);
    const systemOf = (feed: number, exchange: number): string =>
      smallSystem({ title: file, days: 90, feed, exchange, base: 40 }, words.names);
    const first = runText(systemOf(60, 0));
    const shares = nitrogenShares(first);
    const total = shares.reduce((sum, { amount }) => sum + amount, 0);
    const gas = gasOf(first);
    return {
      system: first,
      given: () => [
        kit.table(
          labels.measured,
          [labels.nitrogen, 'g N'],
          [
            [labels.in, [total, 1]],
            ...shares
              .filter(({ name }) => name !== GAS)
              .map(({ name, amount }) => [kit.fate(name), [amount, 1] as const]),
            [labels.gone, '?'],
          ],
        ),
      ],
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 500,
        step: 5,
        value: 50,
        right: gas,
        decimals: 1,
        near: 10,
      },
      shown: () => [...kit.text(words.shown, { gas: [gas, 1] }), kit.verdict(first)],
      sliders: [
        { name: 'feed', from: 20, to: 120, step: 5, value: 120 },
        { name: 'exchange', from: 0, to: 200, step: 10, value: 0 },
        { name: 'error', from: -15, to: 15, step: 1, value: 5 },
      ],
      changed({ feed, exchange, error }) {
        const text = systemOf(feed, exchange);
        const run = runText(text);
        const budget = budgetOf(run, 'nitrogen', 'system');
        const now = gasOf(run);
        const residual = Math.abs(budget.residual) < 1e-6 ? 0 : budget.residual;
        return [
          kit.table(
            labels.balance,
            ['', 'g N'],
            [
              [labels.cameIn, [budget.in, 2]],
              [labels.wentOut, [budget.out, 2]],
              [labels.held, [budget.stored, 2]],
              [labels.residual, [residual, 6]],
            ],
          ),
          ...kit.text(words.changed, {
            'gas-now': [now, 1],
            times: [now / gas, 1],
            end: kit.reading(file, run, 'last', at('nitrate@sump'), 1),
            error: [error, 0],
            read: [now + (error / 100) * fedIn(run), 1],
          }),
          kit.verdict(run),
          kit.file(file, text),
        ];
      },
      answer: () => kit.text(words.answer, { misread: [(0.1 * fedIn(first) * 100) / gas, 0] }),
      sources: () => [kit.sources(first, ['feed', 'solids.', 'denitrification', 'fish.nile-tilapia.body'])],
    };
  },
};
