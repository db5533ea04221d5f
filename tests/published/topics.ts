import { ammoniaCriteria } from './checks/ammonia-criteria.js';
import { carbonate } from './checks/carbonate.js';
import { oxygen } from './checks/oxygen.js';
import { unIonisedAmmonia } from './checks/un-ionised-ammonia.js';
import type { Topic } from './published-check.js';

/** Everything that is held against what is published, whole systems aside. */
export const topics: readonly Topic[] = [unIonisedAmmonia, ammoniaCriteria, carbonate, oxygen];
