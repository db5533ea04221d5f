// Logs of water tests, fits to them, forecasts and what those were worth.
export { csvTable, logTable } from './log/log-table.js';
export { guessLogMap } from './log/guess-map.js';
export { summaryOfLog } from './log/log-summary.js';
export { readLog } from './log/read-log.js';
export { readLogMap } from './log/read-map.js';
export { fit } from './calibration/fit.js';
export { fitText, readFit } from './calibration/fit-file.js';
export { fittedCorrelations, fittedSettings, fittedTable } from './calibration/fit-file.js';
export { withFittedStart } from './calibration/fitted-system.js';
export { forecast } from './calibration/forecast.js';
export { backtest } from './calibration/backtest.js';
//# sourceMappingURL=calibration.js.map