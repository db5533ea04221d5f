import type { Command } from 'commander';
import type { ExitCode } from './exit.js';
import type { Streams } from './streams.js';

/**
 * Adds one command to `leat`. One such function a file, in `words/`; the action loads what it needs only when
 * it is called, so that `leat --help` stays quick, and hands its exit code to `leave`.
 */
export type AddCommand = (root: Command, streams: Streams, leave: (code: ExitCode) => void) => void;
