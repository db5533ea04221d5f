import { useModule } from '@leat/core/module';
import { commandLine, explain } from './command-line.js';
import { processStreams } from './terminal/streams.js';

/** Does what the arguments of the process ask, and sets its exit code. */
export async function start(): Promise<void> {
  useModule();
  const streams = processStreams();
  try {
    process.exitCode = await commandLine(process.argv.slice(2), streams);
  } catch (error) {
    const { text, code } = explain(error, process.env['LEAT_DEBUG'] === '1');
    streams.note(`${text}\n`);
    process.exitCode = code;
  }
}
