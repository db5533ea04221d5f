import type { Backtest } from '@leat/core';
import { shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

/** A backtest in words, whether or not the model wins. */
export function backtestLines({ origins, failed, scores, notes }: Backtest): readonly string[] {
  const rows = scores.map(({ reads, vessel, unit, horizon, count, model, last, month, in50, in90 }) => [
    reads,
    vessel,
    `${horizon === 7 ? 1 : horizon / 2 + 1} to ${horizon}`,
    String(count),
    unit,
    shown(model),
    shown(last),
    shown(month),
    model < Math.min(last, month) ? 'model' : last <= month ? 'last reading' : 'month',
    `${shown(100 * in50)} %`,
    `${shown(100 * in90)} %`,
  ]);
  const wins = scores.filter(({ model, last, month }) => model < Math.min(last, month)).length;
  return [
    `${origins.length} forecasts, the first from ${origins[0]}, the last from ${origins[origins.length - 1]}`,
    ...(failed === 0 ? [] : [`  ${failed} draws broke off`]),
    ...notes.map((note) => `  ${note}`),
    '',
    ...columns(
      [
        [
          'readings',
          'where',
          'days ahead',
          'count',
          'unit',
          'model',
          'last',
          'month',
          'best',
          'in 50 %',
          'in 90 %',
        ],
        ...rows,
      ],
      ['left', 'left', 'left', 'right', 'left', 'right', 'right', 'right', 'left', 'right', 'right'],
    ),
    '  mean absolute errors, in the unit: of the model, of the last reading that stays, of the mean of the last 28 days',
    '  in 50 %, in 90 %: share of readings whose interval meets the band; coarse steps meet it more often',
    `  the model is best in ${wins} of ${scores.length}`,
  ];
}
