import { type Fault, InputError } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import type { Parameters } from '../library/parameters.js';
import { distributions, marks } from '../library/table-row.js';
import type { Values } from '../library/values.js';
import { accounts, conserved, type Content, unitOf } from '../processes/components.js';
import { processes as ours } from '../processes/index.js';
import type { Process } from '../processes/process.js';
import type { Scenario } from '../scenario/scenario.js';
import { rateFaults } from './check-rates.js';
import { formFaults } from './own-form.js';
import { withNumbers } from './own-numbers.js';
import {
  type Additions,
  contentWith,
  type Extension,
  type OwnComponent,
  type OwnNumber,
  ownProcesses,
} from './own.js';
import { scopeTo } from './scope.js';
import { checkClosure } from './stoichiometry.js';

const chemistry = ['pH', 'ammonia', 'carbon-dioxide'];
/** Words that stand before `@` in the names of series beside components. */
const quantities = [
  ...['un-ionised-ammonia', 'temperature', 'volume', 'flank', 'dosed', 'feed', 'fish-mean-mass'],
  ...[
    'degradable-solids',
    'refractory-solids',
    'degradable-settled',
    'refractory-settled',
    'saturation-index',
    'conductivity',
  ],
  ...['evapotranspiration', 'top-up', 'discharge', 'rain-tank', 'rain-tank-spilled'],
];
const places = ['water', 'surface', 'floor', 'cohort', 'batch'];
const idForm = 'a small letter, then small letters, digits and -, at most 64';

/** Collects faults, each at its path. */
class Faults {
  readonly all: Fault[] = [];

  /** Whether something holds; a fault where it does not. */
  needs(holds: boolean, key: string, problem: string, rest: Partial<Fault> = {}): boolean {
    if (!holds) this.all.push({ key, problem, ...rest });
    return holds;
  }

  /** Whether a name is one of those known; a fault with the nearest where it is not. */
  known(name: string, names: readonly string[], key: string, what: string): boolean {
    const near = nearest(name, names);
    const hint = near === undefined ? { expected: `one of ${names.join(', ')}` } : { nearest: near };
    return this.needs(names.includes(name), key, `unknown ${what}`, { got: name, ...hint });
  }

  /** Checks ids: their form, that none is taken, that each stands once. */
  ids(list: readonly { readonly id: string }[], key: string, taken: readonly string[]): void {
    const seen = new Set(taken);
    list.forEach(({ id }, index) => {
      const at = `${key}[${index}].id`;
      const rest = { got: id, expected: idForm };
      if (!this.needs(/^[a-z][a-z0-9-]{0,63}$/.test(id), at, 'not a name', rest)) return;
      const problem = taken.includes(id) ? 'a name of ours' : 'a name given twice';
      this.needs(!seen.has(id), at, problem, { got: id, expected: 'another name' });
      seen.add(id);
    });
  }

  /** What a user's function gives, or a fault that says how it failed. */
  tried<T>(key: string, give: () => T): T | undefined {
    try {
      return give();
    } catch (error) {
      this.all.push({ key, problem: error instanceof Error ? error.message : String(error) });
      return undefined;
    }
  }
}

const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

function checkNumbers(faults: Faults, numbers: readonly OwnNumber[], given: Parameters): void {
  const ours = Array.from(given.ids()).filter((id) =>
    given.number(id).given.every((each) => !('table' in each)),
  );
  const groups = new Set(ours.map((id) => id.split('.')[0]));
  const seen = new Set<string>();
  for (const { id, value, unit, low = value, high = value, distribution, source, mark } of numbers) {
    const key = `numbers.${id}`;
    const form = /^[a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)+$/.test(id);
    if (!faults.needs(form, key, 'not an id', { expected: 'words with dots, such as zeolite.capacity' }))
      continue;
    const [group] = id.split('.');
    faults.needs(!groups.has(group), key, `numbers of ${group} are ours`, {
      expected: 'a word of your own first',
    });
    faults.needs(!seen.has(id), key, 'given twice');
    seen.add(id);
    const finite = [value, low, high].every(Number.isFinite);
    const got = `${low} .. ${value} .. ${high}`;
    if (faults.needs(finite, key, 'not a finite number', { got }))
      faults.needs(low <= value && value <= high, key, 'range does not hold its value', { got });
    if (
      distribution !== undefined &&
      faults.known(distribution, distributions, `${key}.distribution`, 'word')
    )
      faults.needs(distribution === 'fixed' || low < high, key, `${distribution} needs a range`, { got });
    faults.needs(isText(unit), `${key}.unit`, 'missing', { expected: 'a unit' });
    faults.needs(isText(source), `${key}.source`, 'missing', { expected: 'who says so' });
    faults.known(mark, Object.keys(marks), `${key}.mark`, 'mark');
  }
}

function checkContent(faults: Faults, { id, content }: OwnComponent, values: Values): void {
  const key = `components.${id}.content`;
  const held = faults.tried<Partial<Content>>(key, () => content(values));
  for (const [quantity, amount] of Object.entries(held ?? {})) {
    if (faults.known(quantity, conserved, key, 'conserved quantity'))
      faults.needs(Number.isFinite(amount), `${key}.${quantity}`, 'not a finite number', {
        got: String(amount),
      });
  }
}

function checkComponents(
  faults: Faults,
  components: readonly OwnComponent[],
  { vessels }: Scenario,
  values: Values,
): void {
  faults.ids(components, 'components', [...Object.keys(unitOf), ...chemistry, ...quantities]);
  const names = vessels.map(({ name }) => name);
  for (const component of components) {
    const { id, unit, place, start = 0, scale = 1 } = component;
    const key = `components.${id}`;
    faults.needs(isText(unit), `${key}.unit`, 'missing', { expected: 'a unit' });
    if (typeof place === 'string') faults.known(place, places.slice(0, 3), `${key}.place`, 'place');
    else for (const name of place) faults.known(name, names, `${key}.place`, 'vessel');
    const amounts = typeof start === 'number' ? { all: start } : start;
    for (const [name, amount] of Object.entries(amounts)) {
      if (typeof start !== 'number') faults.known(name, names, `${key}.start`, 'vessel');
      const sound = Number.isFinite(amount) && amount >= 0;
      faults.needs(sound, `${key}.start`, 'out of range', { got: String(amount), expected: '0 or more' });
    }
    faults.needs(scale > 0 && scale < Infinity, `${key}.scale`, 'out of range', { expected: 'above 0' });
    checkContent(faults, component, values);
  }
}

function checkProcess(faults: Faults, process: Process, own: readonly string[], values: Values): void {
  const key = `processes.${process.id}`;
  const { title, unit, place, basis, reads } = process;
  faults.needs(isText(title), `${key}.title`, 'missing', { expected: 'what happens, in words' });
  faults.needs(isText(unit), `${key}.unit`, 'missing', { expected: 'the unit of its extent' });
  faults.known(place, places, `${key}.place`, 'place');
  faults.known(basis, ['volume', 'whole'], `${key}.basis`, 'basis');
  const held = Object.keys(unitOf).filter((id) => !outsideOnly.has(id));
  for (const [index, variable] of reads.entries())
    faults.known(variable, [...held, ...chemistry, ...own], `${key}.reads[${index}]`, 'variable');
  const terms = faults.tried(`${key}.stoichiometry`, () => process.stoichiometry(values));
  for (const { component, coefficient, outside } of terms ?? []) {
    const at = `${key}.stoichiometry.${component}`;
    if (!faults.known(component, [...Object.keys(unitOf), ...own], at, 'component')) continue;
    if (outside !== undefined) faults.known(outside, accounts, at, 'account');
    else faults.needs(!outsideOnly.has(component), at, 'must name an account outside');
    if (typeof coefficient === 'number')
      faults.needs(Number.isFinite(coefficient), at, 'not a finite number', { got: String(coefficient) });
    else faults.known(coefficient.closes, conserved, at, 'conserved quantity');
  }
}

/** What is held nowhere inside. */
const outsideOnly = new Set<string>([
  ...['feed-nitrogen', 'feed-demand', 'dinitrogen', 'ammonia-gas'],
  ...['oxygen-gas', 'carbon-dioxide-gas', 'base', 'water'],
]);

/**
 * Components, processes and numbers of a user's own, for `compileModel(scenario, parameters, { extension })`. They are checked
 * there, against the scenario and its numbers: names and places, partials against differences, rates that stop where
 * what they use up ends, rows that close.
 * @throws InputError where a part has not the form that its type says
 */
export function extension(additions: Additions): Extension {
  const faults = formFaults(additions);
  if (faults.length > 0) throw new InputError(faults);
  const { components = [], processes = [], numbers = [] } = additions;
  const added = { components, processes, numbers };
  return { ...added, check: (scenario, given) => checked(scenario, given, added) };
}

function checked(scenario: Scenario, given: Parameters, added: Required<Additions>): Parameters {
  const { components, numbers } = added;
  const processes = ownProcesses(added);
  const faults = new Faults();
  checkNumbers(faults, numbers, given);
  const parameters = withNumbers(given, numbers);
  const subject = {
    species: given.subjects('fish')[0],
    crop: given.subjects('crop')[0],
    feed: { name: given.subjects('feed')[0], protein: 0.3 },
  };
  const values = scopeTo(parameters, subject);
  checkComponents(faults, components, scenario, values);
  faults.ids(processes, 'processes', ['transport', ...ours.map(({ id }) => id)]);
  const own = components.map(({ id }) => id);
  for (const process of processes) checkProcess(faults, process, own, values);
  if (faults.all.length > 0) throw new InputError(faults.all);
  const content = contentWith(components);
  for (const process of processes) {
    checkClosure(process, [values], content);
    faults.all.push(
      ...(faults.tried(`processes.${process.id}`, () => rateFaults(process, values, content)) ?? []),
    );
  }
  if (faults.all.length > 0) throw new InputError(faults.all);
  return parameters;
}
