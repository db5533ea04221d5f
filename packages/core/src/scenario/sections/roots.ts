// Reads numbers as: wetted surface of beds
import { formatQuantity } from '../../base/units.js';
import type { Named } from '../file/report.js';
import type { Planting, Vessel, VesselKind } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';

/** Beds whose roots hang in the water. */
const rootedKinds: ReadonlySet<VesselKind> = new Set(['raft-bed', 'channel']);

/** Area that is planted as the run begins in a vessel, m2. */
function plantedArea(plantings: Named<Planting>, vessel: string): number {
  return [...plantings.values()]
    .filter((planting) => planting?.vessel === vessel && planting.start !== 'empty')
    .reduce((sum, planting) => sum + (planting?.area ?? 0), 0);
}

/**
 * Wetted surfaces that are not written, with the roots that hang in the water of rafts and channels: they carry film as
 * plastic does (`crop.root-surface`, m2 for each m2 planted). They are those of the start: what is planted or left empty
 * later does not change them.
 */
export function withRoots(
  reader: ScenarioReader,
  vessels: Named<Vessel>,
  plantings: Named<Planting>,
): Named<Vessel> {
  return new Map(
    [...vessels].map(([name, vessel]) => {
      const path = ['vessels', name, 'surface'];
      if (vessel === undefined || reader.has(path)) return [name, vessel] as const;
      const planted = rootedKinds.has(vessel.kind) ? plantedArea(plantings, name) : 0;
      const roots = planted > 0 ? planted * reader.parameters.value('crop.root-surface') : 0;
      const surface = vessel.surface + roots;
      return [
        name,
        { ...vessel, surface: reader.fallback(path, surface, formatQuantity(surface, 'area')) },
      ] as const;
    }),
  );
}
