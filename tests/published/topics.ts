import { acidFilms } from './checks/acid-films.js';
import { acidRoots } from './checks/acid-roots.js';
import { ammoniaCriteria } from './checks/ammonia-criteria.js';
import { carbonate } from './checks/carbonate.js';
import { crops } from './checks/crops.js';
import { designGuides } from './checks/design-guides.js';
import { evapotranspiration } from './checks/evapotranspiration.js';
import { filterSizing } from './checks/filter-sizing.js';
import { fishEnergy } from './checks/fish-energy.js';
import { fishGrowth } from './checks/fish-growth.js';
import { fishPapers } from './checks/fish-papers.js';
import { fishWaste } from './checks/fish-waste.js';
import { lime } from './checks/lime.js';
import { nitrification } from './checks/nitrification.js';
import { nitrifyingSurfaces } from './checks/nitrifying-surfaces.js';
import { oxygen } from './checks/oxygen.js';
import { salt } from './checks/salt.js';
import { sludge } from './checks/sludge.js';
import { startUp } from './checks/start-up.js';
import { unIonisedAmmonia } from './checks/un-ionised-ammonia.js';
import type { Topic } from './published-check.js';

/** Everything that is held against what is published, whole systems aside. */
export const topics: readonly Topic[] = [
  unIonisedAmmonia,
  ammoniaCriteria,
  carbonate,
  lime,
  oxygen,
  fishWaste,
  fishGrowth,
  fishEnergy,
  fishPapers,
  nitrification,
  sludge,
  nitrifyingSurfaces,
  acidFilms,
  salt,
  filterSizing,
  startUp,
  crops,
  acidRoots,
  evapotranspiration,
  designGuides,
];
