// Reads numbers as: advice
import type { Plain } from '../../scenario/file/tree.js';
import type { ChangeContext, OpenChange } from './change.js';
import {
  amountLess,
  daysText,
  entriesOf,
  isBox,
  type PlainFile,
  tidy,
  withAction,
  withActions,
} from './file-edit.js';

/** Water in all vessels, m3. */
const waterIn = ({ scenario }: ChangeContext): number =>
  scenario.vessels.reduce((total, { volume }) => total + volume, 0);

/** Most salt that is tried, g in one m3 of all water, and the steps to it. */
const SALT = { most: 1000, steps: 40 };

/** Common salt once, against nitrite. */
export const salt: OpenChange = (context) => {
  const { situation, scenario, asked } = context;
  const nitrite = situation.passed.some((each) => /nitrite|chloride-shortage/.test(each));
  if (!(asked || nitrite || situation.causes.includes('nitrite'))) return undefined;
  const amount = (steps: number): number => tidy((SALT.most * waterIn(context) * steps) / SALT.steps);
  return {
    ...{
      name: 'salt',
      effort: 2,
      most: SALT.steps,
      excess: true,
      ends: false,
      from: situation.from,
      unit: 'g',
    },
    at: [scenario.reservoir],
    amount,
    apply: (file, steps) =>
      withAction(file, {
        at: daysText(situation.from),
        dose: { into: scenario.reservoir, product: 'sodium-chloride', mass: `${amount(steps)} g` },
      }),
  };
};

/** Most base that is tried, eq in one m3 of all water a week, and the steps to it. */
const BASE = { most: 4, steps: 40 };

/** The base that a file doses, or potassium bicarbonate. */
function baseOf({ scenario, parameters }: ChangeContext): string {
  const dosed = scenario.actions.flatMap(({ action }) => (action.kind === 'dose' ? [action.product] : []));
  const isBase = (product: string): boolean => parameters.value(`dose.${product}.alkalinity`) > 0;
  return dosed.find(isBase) ?? 'potassium-bicarbonate';
}

/** Base once a week. */
export const base: OpenChange = (context) => {
  const { situation, scenario, asked, parameters } = context;
  const wanting = situation.passed.some((each) => each === 'pH below' || each === 'alkalinity below');
  const held = situation.held === 'acid' || situation.held === 'carbon';
  if (!(asked || wanting || held)) return undefined;
  const product = baseOf(context);
  const strength = parameters.value(`dose.${product}.alkalinity`);
  const amount = (steps: number): number =>
    tidy((BASE.most * waterIn(context) * steps) / BASE.steps / strength);
  const { from } = situation;
  return {
    ...{
      name: 'base',
      effort: 2,
      most: BASE.steps,
      excess: true,
      ends: true,
      from,
      unit: 'g',
      at: [product],
    },
    amount,
    apply: (file, steps, until) =>
      withAction(file, {
        at: daysText(from),
        every: '7 d',
        ...(until !== undefined && { until: daysText(until) }),
        dose: { into: scenario.reservoir, product, mass: `${amount(steps)} g` },
      }),
  };
};

/** Whether a file says that something is dosed that is meant. */
const dosedIn = (entry: PlainFile): string | undefined => {
  const dose = isBox(entry['dose']) ? entry['dose'] : entry;
  return typeof dose['product'] === 'string' ? dose['product'] : undefined;
};

/** Less of what a file doses, where that makes the water salt or its pH high, in percent. */
export const smallerDose: OpenChange = ({ file, parameters, situation, asked }) => {
  const { passed } = situation;
  const high = passed.some((each) => each === 'pH above' || each === 'un-ionised-ammonia above');
  const meant = (product: string): boolean => {
    const salty = parameters.value(`dose.${product}.chloride`) > 0;
    const basic = parameters.value(`dose.${product}.alkalinity`) > 0;
    return (situation.salt && salty) || (high && basic) || (asked && (salty || basic));
  };
  const products = [...entriesOf(file, 'dosing'), ...entriesOf(file, 'actions')].flatMap((entry) => {
    const product = dosedIn(entry);
    return product !== undefined && meant(product) ? [product] : [];
  });
  const at = [...new Set(products)];
  if (at.length === 0) return undefined;
  const less = (mass: Plain | undefined, steps: number): Plain => amountLess(mass, 1 - steps / 100);
  return {
    ...{ name: 'smaller-dose', effort: 1, most: 100, excess: true, ends: false, unit: '%', at },
    amount: (steps) => steps,
    apply: (before, steps) => {
      const change = (entry: PlainFile): readonly PlainFile[] => {
        const product = dosedIn(entry);
        if (product === undefined || !at.includes(product)) return [entry];
        if (steps === 100) return [];
        const { dose } = entry;
        if (isBox(dose)) return [{ ...entry, dose: { ...dose, mass: less(dose['mass'], steps) } }];
        return [{ ...entry, mass: less(entry['mass'], steps) }];
      };
      const plans = entriesOf(before, 'dosing');
      const dosing = plans.length === 0 ? before : { ...before, dosing: plans.flatMap(change) };
      return withActions(dosing, change);
    },
  };
};
