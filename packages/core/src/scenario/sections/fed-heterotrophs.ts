// Reads numbers as: start in a file
import { group } from 'd3-array';
import { pow } from '../../base/elementary.js';
import { sum } from '../../base/sum.js';
import type { Parameters } from '../../library/parameters.js';
import { gravityOrder } from '../checks/network.js';
import { offerOf } from '../offer.js';
import type { Cohort, Flow, Pump } from '../scenario.js';

/** A vessel at the start: its water, m3 and degC, and the film in it that has grown, m2 (0: none has). */
interface FilmVessel {
  readonly name: string;
  readonly volume: number;
  readonly temperature: number;
  readonly film: number;
}

/** A system as far as its water goes, and who is fed in it. */
export interface FedWater {
  readonly vessels: readonly FilmVessel[];
  readonly flows: readonly Flow[];
  readonly pumps: readonly Pump[];
  readonly cohorts: readonly Cohort[];
}

/** Most rounds in which concentrations are sought, and the change, as a share of the highest, at which they rest. */
const ROUNDS = 1000;
const REST = 1e-9;

/** Oxygen demand that fish fed at the start leave dissolved with their faeces, g COD d-1. */
function leftByFish(parameters: Parameters, { species, ration, number, mass, feed }: Cohort): number {
  const { fed, share } = offerOf(ration, number * mass, number);
  const eaten = (fed + share * number * mass) * (1 - parameters.value('fish.uneaten'));
  const digested = parameters.value(`fish.${species}.energy-digestibility`);
  const faecal = parameters.value(`feed.${feed.name}.demand`) * (1 - digested);
  return eaten * faecal * parameters.value('fish.faecal-dissolved');
}

/** What each flow carries in the mean over the day, m3 d-1: a vessel gives by gravity what it receives. */
function carried({ vessels, flows, pumps }: FedWater): readonly number[] {
  const running = new Map(pumps.map(({ name, timer }) => [name, timer && timer.on / (timer.on + timer.off)]));
  const rates = flows.map((flow) => (flow.kind === 'pumped' ? flow.rate * (running.get(flow.pump) ?? 1) : 0));
  const received = new Map<string, number>();
  const arrive = (i: number): void => {
    const { to } = flows[i];
    received.set(to, (received.get(to) ?? 0) + rates[i]);
  };
  flows.forEach((_, i) => arrive(i));
  const falls = flows.flatMap((flow, i) => (flow.kind === 'pumped' ? [] : [{ ...flow, i }]));
  const leaving = group(falls, ({ from }) => from);
  const names = vessels.map(({ name }) => name);
  for (const name of gravityOrder(names, falls).order) {
    for (const { share, i } of leaving.get(name) ?? []) {
      rates[i] = share * (received.get(name) ?? 0);
      arrive(i);
    }
  }
  return rates;
}

/** What becomes of dissolved matter in a vessel. */
interface Taking {
  /** Clearance by bacteria of the water and by the film, m3 d-1. */
  readonly water: number;
  readonly film: number;
  /** Concentration at which growth of a film stands against its decay, g COD m-3. */
  readonly rest: number;
  /** Cells that a film holds per g COD d-1 that it takes up, g COD. */
  readonly held: number;
}

function takingOf(parameters: Parameters, { volume, temperature, film }: FilmVessel): Taking {
  const warm = (id: string, theta: string): number =>
    parameters.value(id) * pow(parameters.value(theta), temperature - 20);
  const growth = warm('heterotroph.growth', 'heterotroph.growth-theta');
  const decay = warm('heterotroph.decay', 'heterotroph.decay-theta');
  const transfer = warm('biofilm.transfer', 'biofilm.transfer-theta');
  return {
    water: warm('dissolved.oxidation', 'solids.theta') * volume,
    film: growth > decay ? transfer * parameters.value('biofilm.transfer-dissolved') * film : 0,
    rest: (parameters.value('heterotroph.k-dissolved') * decay) / (growth - decay),
    held: parameters.value('heterotroph.yield') / decay,
  };
}

/** Dissolved matter in the water of each vessel where what fish leave is all taken up, g COD m-3. */
function concentrations(
  water: FedWater,
  taking: readonly Taking[],
  left: ReadonlyMap<string, number>,
): readonly number[] {
  const { vessels, flows } = water;
  const rates = carried(water);
  const place = new Map(vessels.map(({ name }, i) => [name, i]));
  const into = vessels.map((): { readonly from: number; readonly rate: number }[] => []);
  flows.forEach(({ from, to }, i) => {
    const [source, end] = [place.get(from), place.get(to)];
    if (source !== undefined && end !== undefined) into[end].push({ from: source, rate: rates[i] });
  });
  const ofAll = (of: (each: Taking) => number): number => sum(taking.map(of));
  const mixed =
    (sum([...left.values()]) + ofAll(({ film, rest }) => film * rest)) /
    ofAll((each) => each.water + each.film);
  const stands = vessels.map(() => mixed);
  for (let round = 0; round < ROUNDS; round++) {
    let change = 0;
    vessels.forEach(({ name }, i) => {
      const coming = into[i].reduce((all, { from, rate }) => all + rate * stands[from], left.get(name) ?? 0);
      const going = into[i].reduce((all, { rate }) => all + rate, taking[i].water);
      const { film, rest } = taking[i];
      const bare = going > 0 ? coming / going : 0;
      const now = bare > rest && film > 0 ? (coming + film * rest) / (going + film) : bare;
      change = Math.max(change, Math.abs(now - stands[i]));
      stands[i] = now;
    });
    if (change <= REST * Math.max(...stands)) break;
  }
  return stands;
}

/**
 * Heterotrophs that the water of each vessel feeds, g COD per m2 of its film, by the rule of nitrifiers: growth on what fish
 * leave dissolved stands against decay. It comes to films through still water, as it does in a run (heterotroph.ts), and
 * bacteria of the water take their part. Oxygen and TAN are not short, solids that stand there are not counted.
 */
export function fedHeterotrophs(parameters: Parameters, water: FedWater): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const cohort of water.cohorts)
    left.set(cohort.vessel, (left.get(cohort.vessel) ?? 0) + leftByFish(parameters, cohort));
  const taking = water.vessels.map((vessel) => takingOf(parameters, vessel));
  const stands = concentrations(water, taking, left);
  return new Map(
    water.vessels.map(({ name, film }, i) => {
      const taken = taking[i].film * Math.max(0, stands[i] - taking[i].rest);
      return [name, film > 0 ? (taking[i].held * taken) / film : 0];
    }),
  );
}
