import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import type { CheckOptions } from './commands/check.js';
import type { RunOptions } from './commands/run.js';
import { exit, type ExitCode } from './exit.js';
import type { Streams } from './streams.js';

/** The same as in package.json; kept here so that --version reads no file. */
const version = '0.1.0';

/** A number above 0, or bad usage. */
function positive(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !(value > 0 && value < Infinity))
    throw new InvalidArgumentError('Give a number above 0.');
  return value;
}

/** A relative tolerance: coarser than 0.1 is no answer, finer than 1e-13 is below rounding. */
function tolerance(text: string): number {
  const value = positive(text);
  if (value > 0.1 || value < 1e-13) throw new InvalidArgumentError('Give a number from 1e-13 to 0.1.');
  return value;
}

function setting(text: string, before: readonly string[]): readonly string[] {
  if (!/^[^=]+=/.test(text)) throw new InvalidArgumentError('Write it as path=value.');
  return [...before, text];
}

const setOption = (): Option =>
  new Option('--set <path=value>', 'put a value in place of one in the file (repeatable)')
    .argParser(setting)
    .default([], 'none');

const exitHelp = `
Exit codes: ${exit.done} done, ${exit.badInput} bad input, ${exit.notFinished} did not finish, ${exit.balanceBroken} balance broken, ${exit.badUsage} bad usage, ${exit.ourBug} our bug.`;

/** Builds the command; each action loads what it needs only when it is called. */
function program(streams: Streams, leave: (code: ExitCode) => void): Command {
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
  root
    .command('run')
    .description('simulate a system and say what nitrogen did in it')
    .argument('<file>', 'scenario file (YAML)')
    .option('--days <number>', 'length of the run, in days', positive)
    .option('--every <time>', 'output step, such as 1d or 6h')
    .addOption(setOption())
    .addOption(new Option('--integrator <name>', 'how to integrate').choices(['rosenbrock', 'odex']))
    .option('--tolerance <number>', 'relative tolerance (default: 1e-6)', tolerance)
    .option('--json', 'print one JSON document instead of the summary')
    .option('--csv <file>', 'write every series to a CSV file')
    .option('--save <file>', 'write the end state, for another run to start from')
    .option('--sources', 'print where the numbers that were used come from')
    .option('--quiet', 'print no summary, no progress and no notes')
    .action(async (file: string, options: RunOptions) => {
      const { runCommand } = await import('./commands/run.js');
      leave(await runCommand(file, options, streams));
    });
  root
    .command('check')
    .description('validate a system and look its design over, without simulating')
    .argument('<file>', 'scenario file (YAML)')
    .addOption(setOption())
    .option('--table', 'print the stoichiometric table')
    .option('--resolved', 'print the file as it is understood, with all it includes')
    .action(async (file: string, options: CheckOptions) => {
      const { checkCommand } = await import('./commands/check.js');
      leave(checkCommand(file, options, streams));
    });
  return root;
}

/**
 * Reads the arguments and does what they ask.
 * @returns the exit code
 */
export async function commandLine(args: readonly string[], streams: Streams): Promise<ExitCode> {
  let code: ExitCode = exit.done;
  const leave = (left: ExitCode): void => {
    code = left;
  };
  try {
    await program(streams, leave).parseAsync([...args], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? exit.done : exit.badUsage;
  }
  return code;
}
