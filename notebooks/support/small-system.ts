/** Names that a language gives to what stands in the system files of its lessons: they are the user's own there. */
export interface SystemNames {
  readonly tank: string;
  readonly filter: string;
  readonly bed: string;
  readonly sump: string;
  readonly pump: string;
  readonly tap: string;
  readonly fish: string;
  readonly crop: string;
  /** The note of the file: that it is invented. */
  readonly note: string;
}

/** What differs from lesson to lesson in the small system: a tank, a filter, a raft bed and a sump. */
export interface SmallSystem {
  readonly title: string;
  readonly days: number;
  /** Feed, g a day over all fish. */
  readonly feed: number;
  readonly fish?: number;
  /** Mean mass, g. */
  readonly mass?: number;
  /** Volume of the tank, m3. */
  readonly tank?: number;
  /** Air in the tank, as a rate of transfer, 1/h. */
  readonly air?: number;
  /** Carriers in the filter, L. */
  readonly media?: number;
  /** Raft bed, m2, and how much of it is planted with lettuce. */
  readonly bed?: number;
  readonly planted?: number;
  readonly batches?: number;
  readonly temperature?: number;
  /** `cycled`, `uncycled` or a share. */
  readonly biofilm?: string;
  /** Potassium bicarbonate, g a week. */
  readonly base?: number;
  /** Top-up allowed, L a day; absent: as much as is lost. */
  readonly cap?: number;
  /** Reference evapotranspiration, mm a day. */
  readonly et0?: number;
  /** Carbon dioxide in the air of the house, ppm; absent: that of open air. */
  readonly carbonDioxide?: number;
  /** Water of the sump at the float, L. */
  readonly sump?: number;
  /** Steady discharge, L a day. */
  readonly exchange?: number;
  readonly feedKind?: string;
  /** Alkalinity of the mains, mg/L as CaCO3. */
  readonly alkalinity?: number;
  readonly start?: string;
  readonly actions?: readonly string[];
  readonly parameters?: Readonly<Record<string, number>>;
  /** Time between outputs, such as `1 h`; absent: a day. */
  readonly every?: string;
}

const listed = (lines: readonly string[]): string =>
  lines.length === 0 ? ' []' : lines.map((line) => `\n  - ${line}`).join('');

/** Share of a bed's area that is its depth in m: 0.3 m of water. */
const BED_DEPTH = 0.3;

const short = (value: number): string => String(Number(value.toPrecision(4)));

/** The small system as a file, with these names in it. All of it is invented. */
export function smallSystem(given: SmallSystem, names: SystemNames): string {
  const { title, days, feed, fish = 30, mass = 150, tank = 1, air = 3, media = 60, bed = 4 } = given;
  const { planted = bed, temperature = 24, batches = 4, biofilm = 'cycled', base = 0 } = given;
  const { cap, et0 = 5, sump = 400, exchange = 0, feedKind = 'grower-32', alkalinity = 140 } = given;
  const dosing =
    base === 0
      ? []
      : [`{ into: ${names.sump}, product: potassium-bicarbonate, mass: ${base} g, every: 7 d }`];
  const own = Object.entries(given.parameters ?? {}).map(([id, value]) => `${id}: ${value}`);
  const start = given.start ?? `{ like: ${names.tap}, ammonia: 0.2 mg N/L, nitrate: 20 mg N/L, pH: 7.5 }`;
  return `title: ${title}
note: ${names.note}
days: ${days}
${given.every === undefined ? '' : `every: ${given.every}\n`}climate:
  water-temperature: ${temperature} degC
  et0: ${et0} mm/d
  greenhouse-factor: 70 %
  light: { outdoors: 30 mol/m2/d, cover: 60 % }${given.carbonDioxide === undefined ? '' : `\n  carbon-dioxide: ${given.carbonDioxide} ppm`}
waters:
  ${names.tap}: { nitrate: 2 mg N/L, alkalinity: ${alkalinity} mg/L as CaCO3, pH: 7.7, chloride: 35 mg/L }
vessels:
  ${names.tank}: { kind: fish-tank, volume: ${short(tank)} m3, area: ${short(1.2 * tank)} m2, aeration: ${air} 1/h }
  ${names.filter}:
    kind: biofilter
    volume: ${short(Math.max(200, 2.5 * media))} L
    area: 0.3 m2
    media: { type: moving-bed-carrier, volume: ${media} L }
    aeration: 15 1/h
  ${names.bed}: { kind: raft-bed, volume: ${short(BED_DEPTH * bed)} m3, area: ${short(bed)} m2, aeration: 3 1/h }
  ${names.sump}: { kind: sump, volume: ${sump + 100} L, area: 0.6 m2${exchange === 0 ? '' : `, exchange: ${exchange} L/d`} }
reservoir: ${names.sump}
pumps:
  ${names.pump}: { inlet: 100 L, restart: 150 L }
flows:
  - { from: ${names.sump}, to: ${names.tank}, pump: ${names.pump}, rate: ${short(1.2 * tank)} m3/h }
  - { from: ${names.tank}, to: ${names.filter} }
  - { from: ${names.filter}, to: ${names.bed} }
  - { from: ${names.bed}, to: ${names.sump} }
top-up:
  level: ${sump} L
  rate: 5 L/min
  from: [{ water: ${names.tap}${cap === undefined ? '' : `, cap: ${cap} L/d`} }]
fish:
  ${names.fish}: { in: ${names.tank}, species: nile-tilapia, number: ${fish}, mass: ${mass} g, feed: ${feedKind}, ration: ${feed} g/d }
plantings:
  ${names.crop}: { in: ${names.bed}, crop: lettuce-butterhead, area: ${Math.max(planted, 0.01)} m2, batches: ${batches}${planted > 0 ? '' : ', start: empty'} }
dosing:${listed(dosing)}
start:
  biofilm: ${biofilm}
  water: ${start}
actions:${listed(given.actions ?? [])}
${own.length === 0 ? '' : `parameters: { ${own.join(', ')} }\n`}`;
}
