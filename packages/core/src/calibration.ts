// Logs of water tests, fits to them, forecasts and what those were worth.
export { csvTable } from './log/log-table.js';
export { sheetParts, sheetTable } from './log/sheet.js';
export { guessLogMap, type ColumnGuess, type MapGuess } from './log/guess-map.js';
export type { LogMap } from './log/log-map.js';
export { summaryOfLog, type LogCourse, type LogSummary } from './log/log-summary.js';
export type { LogTable } from './log/log-table.js';
export { readLog } from './log/read-log.js';
export { actionsOverlays, type ActionsOverlay } from './log/actions-overlay.js';
export { readLogMap, sheetOfMap } from './log/read-map.js';
export type { LogFeed, LogAction, LogNote, LogReading, Oddity, WaterLog } from './log/water-log.js';
export { fit, type Fit, type FitSearch } from './calibration/fit.js';
export { fitBy, openFitRuns, type FitRun, type FitRunValues } from './calibration/fit-runs.js';
export type { FitPart } from './calibration/wanted.js';
export { fitText, readFit, type SavedFit } from './calibration/fit-file.js';
export { fittedCorrelations, fittedSettings, fittedTable } from './calibration/fit-file.js';
export { withFittedStart, type FitSystem } from './calibration/fitted-system.js';
export type { UnloggedFeed } from './calibration/with-log.js';
export { forecast, type Forecast, type ForecastCourse } from './calibration/forecast.js';
export { backtest, type Backtest, type BacktestScore } from './calibration/backtest.js';
export type { FitProvenance, FitStart } from './calibration/fit.js';
export type { FittedValue } from './calibration/fitted-system.js';
export type { Free as FreeNumber } from './calibration/free-parameter.js';
export type { NextTest } from './calibration/diagnostics.js';
export type { Prior } from './calibration/free-parameter.js';
export type { FittedCourse, FittedNumber, SpoiltReading } from './calibration/diagnostics.js';
export type { BacktestRequest } from './calibration/backtest.js';
export type { ForecastRequest } from './calibration/forecast.js';
export type { System as MappedSystem } from './log/guess-map.js';
export type { ColumnUse, DateOrder } from './log/log-map.js';
export type { ActedOn, OwnWords } from './log/action-words.js';
export type { InstrumentChange } from './log/log-map.js';
export type { Offset as InstrumentOffset } from './calibration/instruments.js';
export type { Jump } from './log/jumps.js';
export type { Weights as ForecastWeights } from './calibration/combination.js';
export type { GuessName, Guesses } from './calibration/guesses.js';
export type { Told as ForecastTold } from './calibration/combined-course.js';
export type { Missing as MissingInFit } from './calibration/missing.js';
export type { PastFit } from './calibration/search-fit.js';
export type { FirstRation } from './calibration/with-log.js';
export type {
  FitFault,
  FitVerdict,
  Apart as FitApart,
  Harm as FitHarm,
  Trust as FitTrust,
} from './calibration/verdict.js';
