import { join } from 'node:path';
import { gather } from '../../../packages/cli/src/commands/shared/gather.js';
import type { RunSummary } from '@leat/view/report';
import { shippedPath } from '../../../packages/cli/src/files/shipped.js';
import { folderWith } from '../../support/leat.js';

const silent = { result: () => undefined, note: () => undefined };

/** What a report tells of a shipped scenario. */
export async function summaryOf(name: string, letter: string, days: number): Promise<RunSummary> {
  const told = await gather(shippedPath(name), letter, { set: [], days }, silent);
  return { ...told, file: `${name}.yaml` };
}

/** What a report tells of the small system of the command tests with another file over it. */
export async function summaryOver(text: string, letter = 'A'): Promise<RunSummary> {
  const file = 'over.yaml';
  const folder = folderWith({ [file]: `include: small.yaml\n${text}` });
  return { ...(await gather(join(folder, file), letter, { set: [], days: 10 }, silent)), file };
}
