import { formatQuantity } from '../../base/units.js';
import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { SavedState } from '../saved-state.js';
import { batchName, type Cohort, type Planting, type Vessel } from '../scenario.js';
import { componentOf } from '../supplies.js';
import { startWaterRanges } from './ranges.js';

/** What a saved state is held against. */
export interface SavedPlaces {
  readonly vessels: Named<Vessel>;
  readonly cohorts: Named<Cohort>;
  readonly plantings: Named<Planting>;
}

/** Each state stands once, and each vessel has its volume and all that water holds. */
function checkStates(
  report: Report,
  path: Path,
  { states, volumes }: SavedContent,
  vessels: Named<Vessel>,
): void {
  const dry = new Set(states.map(({ place }) => place).filter((place) => !Object.hasOwn(volumes, place)));
  for (const place of dry)
    if (vessels.has(place))
      report.fault(path, `the volume of ${place} is missing`, { expected: 'the volume of each vessel' });
  const seen = new Set<string>();
  for (const { component, place } of states) {
    const key = `${component}@${place}`;
    if (seen.has(key)) report.fault(path, `${key} stands twice`, { expected: 'each state once' });
    seen.add(key);
  }
  for (const vessel of Object.keys(volumes)) {
    for (const component of Object.keys(startWaterRanges).map(componentOf)) {
      if (seen.has(`${component}@${vessel}`)) continue;
      report.fault(path, `${component}@${vessel} is missing`, { expected: 'each state of a vessel' });
    }
  }
}

/**
 * Nothing stands below zero: solving leaves there at most ten of its tolerances, of 1 per m3 of water and of what is not in
 * water less than a hundredth. Alkalinity may truly be negative.
 */
function checkAmounts(report: Report, path: Path, { states, volumes }: SavedContent): void {
  for (const { component, place, amount } of states) {
    if (component === 'alkalinity' || amount >= -(volumes[place] ?? 0.01)) continue;
    report.fault(path, `${component}@${place} is below zero`, {
      got: String(amount),
      expected: 'an amount of zero or more',
    });
  }
}

/** What a place is of must be the same: fish of one species do not become those of another. */
function checkSame(
  report: Report,
  path: Path,
  kind: string,
  saved: Readonly<Record<string, string>>,
  own: ReadonlyMap<string, string>,
): void {
  for (const [place, was] of Object.entries(saved)) {
    const is = own.get(place);
    if (is === undefined || is === was) continue;
    report.fault(path, `${place} is of another ${kind} than was saved`, { got: is, expected: was });
  }
}

function checkVolumes(report: Report, path: Path, { volumes }: SavedContent, vessels: Named<Vessel>): void {
  for (const [place, volume] of Object.entries(volumes)) {
    const holds = vessels.get(place)?.volume ?? Infinity;
    if (volume <= holds * (1 + 1e-9)) continue;
    report.fault(path, `${place} is saved with more water than it holds`, {
      got: formatQuantity(volume, 'volume'),
      expected: `at most ${formatQuantity(holds, 'volume')}`,
    });
  }
}

type SavedContent = Pick<SavedState, 'volumes' | 'states' | 'species' | 'crops'>;

/**
 * Checks that a saved state is of this system: its places are there, each state stands once, none below zero, each vessel has
 * its volume and all that water holds, water is within its vessels, species and crops are as they were.
 */
export function checkSavedContent(
  report: Report,
  path: Path,
  saved: SavedContent,
  { vessels, cohorts, plantings }: SavedPlaces,
): void {
  const batches = [...plantings].flatMap(([planting, { batches = 0, crop = '' } = {}]) =>
    Array.from({ length: batches }, (_, batch) => [batchName(planting, batches, batch), crop] as const),
  );
  const places = [...vessels.keys(), ...cohorts.keys(), ...batches.map(([batch]) => batch)];
  const named = new Set([...Object.keys(saved.volumes), ...saved.states.map(({ place }) => place)]);
  for (const place of named) report.known(place, places, path, 'place');
  checkStates(report, path, saved, vessels);
  checkAmounts(report, path, saved);
  checkVolumes(report, path, saved, vessels);
  const species = [...cohorts].map(([cohort, given]) => [cohort, given?.species ?? ''] as const);
  checkSame(report, path, 'species', saved.species, new Map(species));
  checkSame(report, path, 'crop', saved.crops, new Map(batches));
}

/** Checks that a run ends after the moment that it goes on from; `way` says what else may be done. */
export function checkGoesOn(report: Report, path: Path, time: number, days: number, way: string): void {
  if (time < days) return;
  report.fault(path, `the run ends before it begins: the state is of day ${time}`, {
    expected: `days above ${time}${way}`,
  });
}
