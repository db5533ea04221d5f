import type { Command } from 'commander';
import { bashCompletion } from './bash-completion.js';
import { fishCompletion } from './fish-completion.js';
import { toldCommands } from './told-command.js';
import { zshCompletion } from './zsh-completion.js';

const makers = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion } as const;

/** The script by which a shell completes the command line, made from the commands as they are. */
export function completionText(root: Command, shell: keyof typeof makers): string {
  return makers[shell](toldCommands(root));
}
