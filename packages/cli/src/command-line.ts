import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import type { CheckOptions } from './commands/check.js';
import type { CompareOptions } from './commands/compare.js';
import type { NewOptions } from './commands/new.js';
import type { RunOptions } from './commands/run.js';
import type { WhyCommandOptions } from './commands/why.js';
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

/** A percentage from 0 to 100. */
function percentage(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !(value >= 0 && value <= 100))
    throw new InvalidArgumentError('Give a number from 0 to 100.');
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

const daysOption = (): Option =>
  new Option('--days <number>', 'length of the run, in days').argParser(positive);
const everyOption = (): Option => new Option('--every <time>', 'output step, such as 1d or 6h');

/** Most runs that have a letter. */
const mostRuns = 26;

/** What is wrong with the days of `leat why`, if anything. */
function daysProblem(other: string | undefined, { at, from, to }: WhyCommandOptions): string | undefined {
  if (other !== undefined)
    return from === undefined && to === undefined ? undefined : 'two files are compared at one day: --at';
  return from !== undefined && at === undefined
    ? undefined
    : 'one file is compared between two of its days: --from and --to';
}

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
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .addOption(new Option('--integrator <name>', 'how to integrate').choices(['rosenbrock', 'odex']))
    .option('--tolerance <number>', 'relative tolerance (default: 1e-5)', tolerance)
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
  root
    .command('compare')
    .description('simulate several systems and put them side by side')
    .argument('<file>', 'scenario file (YAML), or a document of leat run --json')
    .argument('<others...>', 'one or more to compare with it')
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .option('--apart <percent>', 'difference that counts, of the highest of a quantity', percentage, 1)
    .option('--json', 'print one JSON document instead of tables')
    .action(async (file: string, others: string[], options: CompareOptions, command: Command) => {
      const files = [file, ...others];
      if (files.length > mostRuns) command.error(`error: at most ${mostRuns} runs are compared at a time`);
      const { compareCommand } = await import('./commands/compare.js');
      leave(await compareCommand(files, options, streams));
    });
  root
    .command('why')
    .description('say which processes, flows and actions made a quantity differ')
    .argument('<file>', 'scenario file (YAML)')
    .argument('[other]', 'another; without it, two days of the one are compared')
    .requiredOption('--of <quantity>', 'what differs, such as nitrate@sump')
    .option('--at <time>', 'day of both runs, such as 60d (default: the last that both have)')
    .option('--from <time>', 'earlier day of the one run')
    .option('--to <time>', 'later day of the one run (default: its end)')
    .addOption(
      new Option('--around <what>', 'count all water, or also what flows between vessels')
        .choices(['system', 'place'])
        .default('system'),
    )
    .addOption(daysOption())
    .addOption(everyOption())
    .addOption(setOption())
    .option('--json', 'print one JSON document instead of words')
    .action(async (file: string, other: string | undefined, options: WhyCommandOptions, command: Command) => {
      const problem = daysProblem(other, options);
      if (problem !== undefined) command.error(`error: ${problem}`);
      const { whyCommand } = await import('./commands/why.js');
      leave(await whyCommand(other === undefined ? [file] : [file, other], options, streams));
    });
  root
    .command('new')
    .description('copy a worked what-if, and what it includes, to start from')
    .argument('[name]', 'one of the names that --list prints')
    .option('--list', 'print the names and the question each one asks')
    .option('--out <file>', 'where to write it (default: its name, in the current folder)')
    .action(async (name: string | undefined, options: NewOptions) => {
      const { newCommand } = await import('./commands/new.js');
      leave(newCommand(name, options, streams));
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
