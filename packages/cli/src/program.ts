import { Command } from 'commander';
import type { AddCommand } from './commands/shared/options.js';
import { exit, type ExitCode } from './terminal/exit.js';
import type { Streams } from './terminal/streams.js';
import { examples } from './help/examples.js';
import { addAdvise } from './commands/advise/options.js';
import { addCheck } from './commands/check/options.js';
import { addCompare } from './commands/compare/options.js';
import { addCompletion } from './commands/completion/options.js';
import { addBacktest } from './commands/backtest/options.js';
import { addForecast } from './commands/forecast/options.js';
import { addFit } from './commands/fit/options.js';
import { addLog } from './commands/log/options.js';
import { addEnsemble } from './commands/ensemble/options.js';
import { addMerge } from './commands/merge/options.js';
import { addNew } from './commands/new/options.js';
import { addPlan } from './commands/plan/options.js';
import { addPlot } from './commands/plot/options.js';
import { addReport } from './commands/report/options.js';
import { addRun } from './commands/run/options.js';
import { addSensitivity } from './commands/sensitivity/options.js';
import { addShow } from './commands/show/options.js';
import { addSize } from './commands/size/options.js';
import { addSteady } from './commands/steady/options.js';
import { addSweep } from './commands/sweep/options.js';
import { addWhy } from './commands/why/options.js';

/** The same as in package.json; kept here so that --version reads no file. */
const version = '0.1.0';

/** Every command, in the order in which the help names them. */
const commands: readonly AddCommand[] = [
  addRun,
  addCheck,
  addCompare,
  addWhy,
  addAdvise,
  addReport,
  addPlot,
  addSteady,
  addSize,
  addPlan,
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

/** Runs the module that `--extend` names, says so, and puts what it gave in place of its name. Throws FileError and InputError. */
async function extend(command: Command, streams: Streams): Promise<void> {
  const { extend: path, quiet } = command.opts<{ readonly extend?: string; readonly quiet?: boolean }>();
  if (path === undefined) return;
  const { extensionNote, openExtension } = await import('./files/extension.js');
  const loaded = await openExtension(path);
  if (quiet !== true) streams.note(`${extensionNote(path, loaded)}\n`);
  command.setOptionValue('extend', loaded);
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
  root.hook('preAction', async (_, command) => {
    await extend(command, streams);
  });
  for (const add of commands) add(root, streams, leave);
  for (const command of root.commands) command.addHelpText('after', exampleHelp(command.name()));
  return root;
}
