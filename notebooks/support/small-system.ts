/** What differs from lesson to lesson in the small system: a tank, a filter, a raft bed and a sump. */
export interface SmallSystem {
  readonly title: string;
  readonly days: number;
  /** Feed, g a day over all fish. */
  readonly feed: number;
  readonly fish?: number;
  /** Mean mass, g. */
  readonly mass?: number;
  /** Carriers in the filter, L. */
  readonly media?: number;
  /** Raft bed, m2, and how much of it is planted with lettuce. */
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
  readonly air?: number;
  /** Water of the sump at the float, L. */
  readonly sump?: number;
  /** Steady discharge, L a day. */
  readonly exchange?: number;
  readonly feedKind?: string;
  /** Alkalinity of the mains, mg/L as CaCO3. */
  readonly alkalinity?: number;
  readonly start?: string;
  readonly dosing?: readonly string[];
  readonly actions?: readonly string[];
  readonly parameters?: Readonly<Record<string, number>>;
}

const listed = (lines: readonly string[]): string =>
  lines.length === 0 ? ' []' : lines.map((line) => `\n  - ${line}`).join('');

/** The small system as a file. All of it is invented. */
export function smallSystem(given: SmallSystem): string {
  const { title, days, feed, fish = 30, mass = 150, media = 60, planted = 4, temperature = 24 } = given;
  const {
    batches = 4,
    biofilm = 'cycled',
    base = 0,
    cap,
    et0 = 5,
    sump = 400,
    exchange = 0,
    feedKind = 'grower-32',
    alkalinity = 140,
  } = given;
  const dosing = [
    ...(base === 0 ? [] : [`{ into: sump, product: potassium-bicarbonate, mass: ${base} g, every: 7 d }`]),
    ...(given.dosing ?? []),
  ];
  const own = Object.entries(given.parameters ?? {}).map(([id, value]) => `${id}: ${value}`);
  return `title: ${title}
note: Invented for a lesson.
days: ${days}
climate:
  water-temperature: ${temperature} degC
  et0: ${et0} mm/d
  greenhouse-factor: 70 %
  light: { outdoors: 30 mol/m2/d, cover: 60 % }${given.air === undefined ? '' : `\n  carbon-dioxide: ${given.air} ppm`}
waters:
  mains: { nitrate: 2 mg N/L, alkalinity: ${alkalinity} mg/L as CaCO3, pH: 7.7, chloride: 35 mg/L }
vessels:
  tank: { kind: fish-tank, volume: 1 m3, area: 1.2 m2, aeration: 3 1/h }
  filter:
    kind: biofilter
    volume: 200 L
    area: 0.3 m2
    media: { type: moving-bed-carrier, volume: ${media} L }
    aeration: 15 1/h
  bed: { kind: raft-bed, volume: 1.2 m3, area: 4 m2, aeration: 3 1/h }
  sump: { kind: sump, volume: ${sump + 100} L, area: 0.6 m2${exchange === 0 ? '' : `, exchange: ${exchange} L/d`} }
reservoir: sump
pumps:
  main: { inlet: 100 L, restart: 150 L }
flows:
  - { from: sump, to: tank, pump: main, rate: 1.2 m3/h }
  - { from: tank, to: filter }
  - { from: filter, to: bed }
  - { from: bed, to: sump }
top-up:
  level: ${sump} L
  rate: 5 L/min
  from: [{ water: mains${cap === undefined ? '' : `, cap: ${cap} L/d`} }]
fish:
  tilapia: { in: tank, species: nile-tilapia, number: ${fish}, mass: ${mass} g, feed: ${feedKind}, ration: ${feed} g/d }
plantings:
  lettuce: { in: bed, crop: lettuce-butterhead, area: ${Math.max(planted, 0.01)} m2, batches: ${batches}${planted > 0 ? '' : ', start: empty'} }
dosing:${listed(dosing)}
start:
  biofilm: ${biofilm}
  water: ${given.start ?? '{ like: mains, ammonia: 0.2 mg N/L, nitrate: 20 mg N/L, pH: 7.5 }'}
actions:${listed(given.actions ?? [])}
${own.length === 0 ? '' : `parameters: { ${own.join(', ')} }\n`}`;
}
