import { Command } from 'commander';
import type { AddCommand } from './add-command.js';
import { exit, type ExitCode } from './exit.js';
import type { Streams } from './streams.js';
import { examples } from './help/examples.js';
import { addCheck } from './words/check.js';
import { addCompare } from './words/compare.js';
import { addCompletion } from './words/completion.js';
import { addBacktest } from './words/backtest.js';
import { addForecast } from './words/forecast.js';
import { addFit } from './words/fit.js';
import { addLog } from './words/log.js';
import { addEnsemble } from './words/ensemble.js';
import { addMerge } from './words/merge.js';
import { addNew } from './words/new.js';
import { addPlot } from './words/plot.js';
import { addReport } from './words/report.js';
import { addRun } from './words/run.js';
import { addSensitivity } from './words/sensitivity.js';
import { addShow } from './words/show.js';
import { addSize } from './words/size.js';
import { addSteady } from './words/steady.js';
import { addSweep } from './words/sweep.js';
import { addWhy } from './words/why.js';

/** The same as in package.json; kept here so that --version reads no file. */
const version = '0.1.0';

/** Every command, in the order in which the help names them. */
const commands: readonly AddCommand[] = [
  addRun,
  addCheck,
  addCompare,
  addWhy,
  addReport,
  addPlot,
  addSteady,
  addSize,
  addSweep,
  addEnsemble,
  addMerge,
  addSensitivity,
  addLog,
  addFit,
  addForecast,
  addBacktest,
  addShow,
  addNew,
  addCompletion,
];

const exitHelp = `
Exit codes: ${exit.done} done, ${exit.badInput} bad input, ${exit.notFinished} did not finish, ${exit.balanceBroken} balance broken, ${exit.badUsage} bad usage, ${exit.ourBug} our bug, ${exit.interrupted} interrupted, ${exit.terminated} terminated.`;

/** The examples of a command, as they close its help. */
function exampleHelp(name: string): string {
  const lines = examples[name].flatMap(([args, what]) => [`  leat ${args}`, `      ${what}`]);
  return ['', 'Examples:', ...lines].join('\n');
}

/** Builds the command; each action loads what it needs only when it is called. */
export function program(streams: Streams, leave: (code: ExitCode) => void): Command {
  const root = new Command('leat')
    .description('Nitrogen in recirculating fish-and-plant systems')
    .version(version)
    .configureOutput({
      writeOut: (text) => {
        streams.result(text);
      },
      writeErr: (text) => {
        streams.note(text);
      },
    })
    .exitOverride()
    .showHelpAfterError('(leat --help says more)')
    .addHelpText('after', exitHelp);
  for (const add of commands) add(root, streams, leave);
  for (const command of root.commands) command.addHelpText('after', exampleHelp(command.name()));
  return root;
}
