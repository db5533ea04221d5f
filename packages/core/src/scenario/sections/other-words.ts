import { sameCrops } from '../../library/other-names.js';
import { type Entry, isEmpty, type Origin, type Tree } from '../file/tree.js';

/** Kinds of vessel in the words of the trade, by the kind that they are here. */
const kinds: Readonly<Record<string, string>> = {
  clarifier: 'settler',
  'radial-clarifier': 'settler',
  'radial-flow-settler': 'settler',
  'settling-tank': 'settler',
  'swirl-filter': 'settler',
  'swirl-separator': 'settler',
  'drum-filter': 'screen',
  microscreen: 'screen',
  'gravel-bed': 'media-bed',
  'grow-bed': 'media-bed',
  'flood-and-drain': 'media-bed',
  'ebb-and-flow': 'media-bed',
  raft: 'raft-bed',
  dwc: 'raft-bed',
  'deep-water-culture': 'raft-bed',
  nft: 'channel',
  gutter: 'channel',
  'trickling-filter': 'biofilter',
  'moving-bed': 'biofilter',
  mbbr: 'biofilter',
};

/** What is done, in the words of the trade, by the action that it is here. */
const verbs: Readonly<Record<string, string>> = {
  'haul-water': 'cart-water',
  'tank-water': 'cart-water',
  'deliver-water': 'cart-water',
  fallow: 'leave-empty',
  mortality: 'lose-fish',
  mortalities: 'lose-fish',
  'water-exchange': 'change-water',
  outage: 'power-cut',
  blackout: 'power-cut',
  desludge: 'drain-solids',
  backwash: 'clean',
  treat: 'medicate',
};

/** What a filter is like at the start. */
const ripeness: Readonly<Record<string, string>> = {
  mature: 'cycled',
  established: 'cycled',
  seasoned: 'cycled',
  new: 'uncycled',
};

/** A word that was understood as another. */
interface Understood {
  readonly origin: Origin;
  readonly word: string;
  readonly ours: string;
}

type Change = (tree: Tree, told: Understood[]) => Tree;

/** A word in place of another of the same meaning; anything else as it is. */
function value(words: Readonly<Record<string, string>>): Change {
  return (tree, told) => {
    if (tree.kind !== 'scalar' || typeof tree.value !== 'string') return tree;
    const word = tree.value.toLowerCase().replace(/[ _]/g, '-');
    if (!Object.hasOwn(words, word)) return tree;
    const ours = words[word];
    told.push({ origin: tree.origin, word: tree.value, ours });
    return { ...tree, value: ours };
  };
}

/** Keys in place of others of the same meaning, unless both are written. */
function keys(words: Readonly<Record<string, string>>): Change {
  return (tree, told) => {
    if (tree.kind !== 'map') return tree;
    const written = new Map([...tree.entries].filter(([, { node }]) => !isEmpty(node)));
    const entries = [...written].map(([key, entry]): [string, Entry] => {
      const ours = Object.hasOwn(words, key) ? words[key] : key;
      if (ours === key || written.has(ours)) return [key, entry];
      told.push({ origin: entry.origin, word: key, ours });
      return [ours, entry];
    });
    return { ...tree, entries: new Map(entries) };
  };
}

/** A change of what stands under one key (`*`: under each), of a map or a list. */
function under(step: string, change: Change): Change {
  return (tree, told) => {
    if (tree.kind === 'list')
      return step === '*' ? { ...tree, items: tree.items.map((item) => change(item, told)) } : tree;
    if (tree.kind !== 'map') return tree;
    const entries = [...tree.entries].map(([key, entry]): [string, Entry] =>
      step === '*' || step === key ? [key, { ...entry, node: change(entry.node, told) }] : [key, entry],
    );
    return { ...tree, entries: new Map(entries) };
  };
}

/** Crops that the file gives numbers of its own: `crop.NAME` of `parameters`. */
function ownCrops(tree: Tree): ReadonlySet<string> {
  const parameters = tree.kind === 'map' ? tree.entries.get('parameters')?.node : undefined;
  const names = parameters?.kind === 'map' ? [...parameters.entries.keys()] : [];
  return new Set(names.flatMap((id) => (id.startsWith('crop.') ? [id.split('.')[1] ?? ''] : [])));
}

/**
 * A file with other words of the trade in place of which Leat has its own, and what is to be told of each: where it stands and
 * the name used here. Names that people give (of vessels, crops of their own) are never touched.
 */
export function understood(tree: Tree): { readonly tree: Tree; readonly notes: readonly string[] } {
  const own = ownCrops(tree);
  const crops = Object.fromEntries(Object.entries(sameCrops).filter(([word]) => !own.has(word)));
  const filter = (one: Tree, told: Understood[]): Tree =>
    under('biofilm', value(ripeness))(keys({ filter: 'biofilm' })(one, told), told);
  const changes: readonly Change[] = [
    under('vessels', under('*', under('kind', value(kinds)))),
    under('actions', under('*', keys(verbs))),
    under('rules', under('*', under('do', keys(verbs)))),
    under('rules', under('*', under('undo', keys(verbs)))),
    under('start', filter),
    under('start', under('vessels', under('*', filter))),
    under('plantings', under('*', under('crop', value(crops)))),
  ];
  const told: Understood[] = [];
  const whole = changes.reduce((changed, change) => change(changed, told), tree);
  const byWord = new Map<string, Understood[]>();
  for (const each of told) byWord.set(each.word, [...(byWord.get(each.word) ?? []), each]);
  const notes = [...byWord.values()].map((places) => {
    const [{ origin, word, ours }] = places as [Understood];
    const at = origin.line === undefined ? origin.file : `${origin.file}:${origin.line}`;
    const more = places.length === 1 ? '' : `, in ${places.length} places`;
    return `${at}: ${word} is understood as ${ours}, the name used here${more}`;
  });
  return { tree: whole, notes };
}
