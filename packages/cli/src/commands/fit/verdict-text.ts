import type { Fit, FitApart as Apart, FitHarm } from '@leat/core';
import { listed, shown } from '@leat/view/text';

type Lines = readonly string[];
type Fault = Fit['faults'][number];

const percent = (share: number): string => `${shown(100 * share)} %`;

/** What is there by the readings, in words: a range, one number where both ends read alike. */
export function saidByReadings({ low, high, unit }: Pick<Apart, 'low' | 'high' | 'unit'>): string {
  const of = unit === '' ? '' : ` ${unit}`;
  const [from, to] = [shown(low), shown(high)];
  return from === to ? `${from}${of}` : `${from} to ${to}${of}`;
}

/** A quantity beside its readings; where what they say holds what the fit has, they miss it now this way, now that. */
function apart(fault: Apart): string {
  const { reads, vessel, unit, fitted, low, high } = fault;
  const said = saidByReadings(fault);
  const told =
    fitted < low || fitted > high ? `readings say ${said}` : `by how it missed them it may be ${said}`;
  return `${reads} in ${vessel}: the fit has ${shown(fitted)}${unit === '' ? '' : ` ${unit}`}, ${told}`;
}

/** How far off, in words: `a factor of 2`, `0.3`, `4 kit errors`. */
const harmText = ({ kind, size }: FitHarm): string =>
  ({
    factor: `a factor of ${shown(size)}`,
    difference: shown(Math.round(100 * size) / 100),
    errors: `${shown(size)} kit errors`,
  })[kind];

/** What being trusted means of some quantities: `ammonia and nitrite within a factor of 2, pH within 0.3`. */
function trustText(trusted: Fit['trust']): string {
  const kinds = [...new Set(trusted.map(({ harm }) => harmText(harm)))];
  return kinds
    .map((kind) => {
      const own = trusted.filter(({ harm }) => harmText(harm) === kind);
      return `${listed([...new Set(own.map(({ reads }) => reads))])} within ${kind}`;
    })
    .join(', ');
}

/** Why a fit, or a quantity of it, is not to be trusted: one line, its name first. */
function faultLine(fault: Fault): string {
  switch (fault.kind) {
    case 'spoilt':
      return `spoilt readings: ${percent(fault.share)} lie far from the model, at most ${percent(fault.allowed)} are believed`;
    case 'today':
      return `today: ${apart(fault)}`;
    case 'start':
      return `start: ${apart(fault)}, in the first two weeks: does the file say how it began?`;
    case 'course':
      return `course: ${fault.reads} in ${fault.vessel} is off by more than ${harmText(fault.harm)} for ${percent(fault.share)} of the time`;
    case 'end-of-range':
      return `end of range: ${fault.name} ran to ${shown(fault.value)}, the end of what was believed of it (${shown(fault.end)})`;
    case 'searches':
      return `searches: they end at different places, ${shown(fault.apart)} apart in log probability`;
  }
}

function missingLine({ kind, size, gain }: Fit['missing'][number]): string {
  const told = {
    discharge: `water changes or discharge that the file does not have, or a second sink of nitrate: ${percent(size)} of the water a day`,
    volume: `a wrong volume: ${shown(size)} of that of the file`,
    feed: `a wrong weight of feed: ${shown(size)} of what is written`,
  };
  return `    ${told[kind]} (gains ${shown(gain)} in log probability)`;
}

/** Quantities by where they are: `ammonia and nitrite in tank, pH in sump`. */
function named(trust: Fit['trust']): string {
  const vessels = [...new Set(trust.map(({ vessel }) => vessel))];
  return vessels
    .map((vessel) => {
      const own = trust.filter((each) => each.vessel === vessel);
      return `${listed(own.map(({ reads }) => reads))} in ${vessel}`;
    })
    .join(', ');
}

function headLine({ verdict, trust, faults }: Fit): string {
  const good = named(trust.filter(({ trusted }) => trusted === true));
  const off = named(trust.filter(({ trusted }) => trusted === false));
  if (verdict === 'trusted')
    return good === ''
      ? 'too few readings of anything to tell whether to trust it'
      : `nothing in the log speaks against this fit: trust ${good}`;
  if (verdict === 'partly') return off === '' ? `trust ${good}` : `trust ${good}, but not ${off}`;
  const whole = faults.some(
    ({ kind }) => kind === 'spoilt' || kind === 'searches' || kind === 'end-of-range',
  );
  return whole || good === '' || off === ''
    ? 'FAILED; do not rely on its numbers'
    : `FAILED for ${off}; what it says of ${good} agrees with the readings`;
}

/** The gravest that is said against each quantity; the rest of it says the same in other words. */
function worstOfEach(faults: Fit['faults']): Fit['faults'] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    if (!('reads' in fault)) return true;
    const key = `${fault.reads}@${fault.vessel}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** The verdict on a fit: what to trust, what not and why, and what is probably missing. */
export function verdictLines(fit: Fit): Lines {
  const { verdict, trust, faults, missing } = fit;
  const good = trust.filter(({ trusted }) => trusted === true);
  const untold = trust.filter(({ trusted }) => trusted === undefined);
  return [
    `  verdict: ${headLine(fit)}`,
    ...worstOfEach(faults).map((fault) => `    ${faultLine(fault)}`),
    ...(good.length === 0
      ? []
      : [`    to be trusted: right today, and most of the time: ${trustText(good)}`]),
    ...(untold.length === 0 ? [] : [`    too few readings to tell: ${named(untold)}`]),
    ...(missing.length > 0
      ? ['  what is probably missing (tried, all numbers free to follow):', ...missing.map(missingLine)]
      : verdict === 'failed'
        ? ['  tried, and of no help: discharge or a second sink, another volume, another weight of feed']
        : []),
  ];
}
