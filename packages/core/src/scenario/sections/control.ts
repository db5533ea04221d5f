// Reads numbers as: control in a file
import * as z from 'zod';
import { describeDimension, formatQuantity, parseQuantity } from '../../base/units.js';
import { kindComplaint } from '../file/complaint.js';
import type { Named } from '../file/report.js';
import { nodeAt, type Path } from '../file/tree.js';
import { choice, described, positive, type Reads, section, word } from '../file/values.js';
import type { Doser, Vessel } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';

/** A pH as a bare number, or an alkalinity with its unit. */
function level(description: string): Reads<string | number, string | number> {
  return z
    .union([z.string(), z.number()], { error: ({ input }) => kindComplaint(input, described(description)) })
    .meta({ description, examples: ['75 mg/L as CaCO3', 6.8] });
}

const products = z
  .union([z.string(), z.array(z.string()).min(1)], {
    error: ({ input }) => kindComplaint(input, 'a product of the library, or a list of them'),
  })
  .meta({
    description:
      'what is dosed: products of the library that all bring base, or all acid; several are fed in equal masses',
    examples: ['potassium-hydroxide'],
  });

/** One doser of `control`. */
export const controlSchema = section(
  {
    hold: choice('what is held', ['pH', 'alkalinity']),
    in: word('the vessel whose water is measured, and into which is dosed'),
    at: level(
      'the value held: a base is fed below it, an acid above it; range: a pH from 0 to 14, or 0 or more',
    ),
    with: products,
    band: level(
      'how far beyond `at` the doser gives its most; nearer it gives less; range: more than 0; default: 0.1 pH, or 0.1 eq/m3',
    ).optional(),
    most: positive('mass-flow', 'most that the doser gives, of all its products together'),
  },
  'a doser that holds pH or alkalinity',
);

/** Most dosers of a file. */
const mostDosers = 200;

/** Band where none is written: pH, or eq m-3. */
const usualBand = 0.1;

/** Share of a distance that counts as rounding. */
const ROUNDING = 1e-9;

type Held = Doser['hold'];

/** A pH or an alkalinity (eq m-3); undefined and a fault where it is none. */
function readLevel(
  reader: ScenarioReader,
  path: Path,
  hold: Held,
  written: string | number,
): number | undefined {
  if (hold === 'pH') {
    if (typeof written === 'number' && written >= 0 && written <= 14) return written;
    reader.fault(path, 'not a pH', { expected: 'a number from 0 to 14' });
    return undefined;
  }
  if (typeof written === 'number') {
    reader.fault(path, 'a number without a unit', { expected: describeDimension('alkalinity') });
    return undefined;
  }
  const answer = parseQuantity(written, 'alkalinity');
  if ('value' in answer) return answer.value;
  reader.fault(path, answer.problem, answer);
  return undefined;
}

/** 1 where all products bring base, -1 where all bring acid; undefined and a fault where that is not so. */
function readSign(reader: ScenarioReader, path: Path, names: readonly string[]): 1 | -1 | undefined {
  const list = nodeAt(reader.tree, path)?.kind === 'list';
  const signs = names.map((name, index): number | undefined => {
    const at = list ? [...path, index] : path;
    if (!reader.known(name, reader.names('dose'), at, 'product')) return undefined;
    if (names.indexOf(name) < index) reader.fault(at, 'a product given twice');
    const alkalinity = reader.parameters.value(`dose.${name}.alkalinity`);
    if (alkalinity !== 0) return Math.sign(alkalinity);
    reader.fault(at, 'a product without alkalinity holds neither pH nor alkalinity', {
      expected: 'a base or an acid: see `leat show dosing`',
    });
    return undefined;
  });
  if (signs.includes(undefined)) return undefined;
  if (signs.every((sign) => sign === signs[0])) return signs[0] === 1 ? 1 : -1;
  reader.fault(path, 'a base and an acid in one doser', {
    got: names.join(', '),
    expected: 'products that all bring base, or all acid; another entry for the others',
  });
  return undefined;
}

function readBand(
  reader: ScenarioReader,
  path: Path,
  hold: Held,
  written: string | number | undefined,
): number | undefined {
  if (written === undefined) {
    const shown = hold === 'pH' ? usualBand : formatQuantity(usualBand, 'alkalinity');
    return reader.fallback(path, usualBand, shown);
  }
  const band = readLevel(reader, path, hold, written);
  if (band === undefined || band > 0) return band;
  reader.fault(path, 'must be more than zero', {
    expected: hold === 'pH' ? 'such as 0.1' : 'such as "0.1 meq/L"',
  });
  return undefined;
}

function readDoser(reader: ScenarioReader, path: Path, vessels: Named<Vessel>): Doser | undefined {
  const given = reader.parse(controlSchema, path);
  if (given === undefined) return undefined;
  const { hold, in: vessel, most } = given;
  const known = reader.known(vessel, vessels, [...path, 'in'], 'vessel');
  const setPoint = readLevel(reader, [...path, 'at'], hold, given.at);
  const band = readBand(reader, [...path, 'band'], hold, given.band);
  const written = given.with;
  const names = typeof written === 'string' ? [written] : written;
  const sign = readSign(reader, [...path, 'with'], names);
  if (!known || setPoint === undefined || band === undefined || sign === undefined) return undefined;
  return { hold, vessel, setPoint, products: names, band, most, sign };
}

/** Dosers of one vessel that cannot both be: the same twice, or a base and an acid that feed at once. */
function checkPairs(reader: ScenarioReader, dosers: readonly (Doser | undefined)[]): void {
  dosers.forEach((doser, index) => {
    const path = ['control', index];
    for (const other of dosers.slice(0, index)) {
      if (doser === undefined || other?.vessel !== doser.vessel || other.hold !== doser.hold) continue;
      if (other.sign === doser.sign) {
        const kind = doser.sign === 1 ? 'base' : 'acid';
        reader.fault(path, `${doser.hold} of ${doser.vessel} is held with ${kind} twice`, {
          expected: 'one entry, with a list of products',
        });
        continue;
      }
      const [base, acid] = doser.sign === 1 ? [doser, other] : [other, doser];
      const apart = Math.max(base.band, acid.band);
      if (acid.setPoint - base.setPoint >= apart * (1 - ROUNDING)) continue;
      reader.fault([...path, 'at'], 'a base and an acid so near that they work against each other', {
        got: `base below ${base.setPoint}, acid above ${acid.setPoint}`,
        expected: `the acid a band (${apart}) or more above the base`,
      });
    }
  });
}

/** Reads the section `control`: dosers that hold pH or alkalinity. */
export function readControl(reader: ScenarioReader, vessels: Named<Vessel>): readonly Doser[] {
  const dosers = reader.listed('control', mostDosers, (path) => readDoser(reader, path, vessels));
  checkPairs(reader, dosers);
  return dosers.filter((doser) => doser !== undefined);
}
