#!/usr/bin/env node
import { explain } from './command-line.js';
import { commandLine } from './command-line.js';
import { processStreams } from './terminal/streams.js';

const streams = processStreams();
try {
  process.exitCode = await commandLine(process.argv.slice(2), streams);
} catch (error) {
  const { text, code } = explain(error, process.env['LEAT_DEBUG'] === '1');
  streams.note(`${text}\n`);
  process.exitCode = code;
}
