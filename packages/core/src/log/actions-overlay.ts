import type { WaterLog } from './water-log.js';

/** Actions of a log as files that lie over a system file: under which name, and their text. */
export interface ActionsOverlay {
  readonly file: string;
  readonly text: string;
}

/**
 * What a log tells was done, as files to be laid over its system file: each action stands on the line of its row in the log,
 * so that a fault names that row. The actions that the map adds are a second file, under the map's name.
 * @param system path of the system file, as the overlay names it
 */
export function actionsOverlays(log: WaterLog, map: string, system: string): readonly ActionsOverlay[] {
  const overlay = (
    file: string,
    under: string,
    lines: readonly { row: number; line: string }[],
  ): ActionsOverlay => {
    const last = Math.max(...lines.map(({ row }) => row), 2);
    const text = Array.from({ length: last }, (_, i) => {
      const own = lines.filter(({ row }) => row === i + 1).map(({ line }) => `${line},`);
      return [...(i === 0 ? [`{ include: [${JSON.stringify(under)}], "actions+": [`] : []), ...own].join(' ');
    });
    return { file, text: [...text, '] }', ''].join('\n') };
  };
  const overlays: ActionsOverlay[] = [];
  if (log.actions.length > 0) overlays.push(overlay(log.file, system, log.actions));
  if (log.added.length > 0) {
    const lines = log.added.map((line, i) => ({ row: i + 1, line }));
    overlays.push(overlay(map, overlays[0]?.file ?? system, lines));
  }
  return overlays;
}
