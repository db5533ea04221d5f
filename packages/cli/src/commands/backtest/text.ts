import type { Backtest, BacktestScore } from '@leat/core';
import { modelShare } from '../shared/model-share.js';
import { shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

const best = ({ forecast, last, month }: BacktestScore): string =>
  forecast < Math.min(last, month) ? 'forecast' : last <= month ? 'last reading' : 'month';

/** A backtest in words, whether or not the forecast wins. */
export function backtestLines({
  origins,
  fits,
  failed,
  scores,
  overGuess,
  notes,
}: Backtest): readonly string[] {
  const rows = scores.map((score) => [
    score.reads,
    score.vessel,
    `${score.horizon === 7 ? 1 : score.horizon / 2 + 1} to ${score.horizon}`,
    String(score.count),
    score.unit,
    shown(score.forecast),
    shown(score.model),
    shown(score.last),
    shown(score.month),
    best(score),
    `${shown(100 * modelShare(score.weights))} %`,
    `${shown(100 * score.in50)} %`,
    `${shown(100 * score.in90)} %`,
  ]);
  const wins = scores.filter(({ forecast, last, month }) => forecast < Math.min(last, month)).length;
  return [
    `${origins.length} forecasts, the first from ${origins[0]}, the last from ${origins[origins.length - 1]}; ${fits.length} fits`,
    ...(failed === 0 ? [] : [`  ${failed} forecasts broke off`]),
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
          'forecast',
          'model',
          'last',
          'month',
          'best',
          'by model',
          'in 50 %',
          'in 90 %',
        ],
        ...rows,
      ],
      [
        ...(['left', 'left', 'left', 'right', 'left', 'right', 'right'] as const),
        ...(['right', 'right', 'right', 'right', 'right', 'right'] as const),
      ],
    ),
    '  mean absolute errors, in the unit: of the forecast, of the model alone, of the last reading that stays, of the mean of the last 28 days',
    "  by model: mean share of the model's change in the forecast; the rest is habit: the level of the readings goes on as it does",
    '  in 50 %, in 90 %: share of readings in the bands of what a kit shows, each by as much of it as lies there',
    `  the forecast is best in ${wins} of ${scores.length}${overGuess === undefined ? '' : `; its error is ${overGuess.toFixed(2)} of that of the better simple guess (geometric mean)`}`,
  ];
}
