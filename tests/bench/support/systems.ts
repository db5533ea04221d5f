/**
 * Scenario files of systems of any size, made up for measuring: water is pumped from a sump to where it enters and comes
 * back by gravity; every vessel has a surface for biofilm, every eighth has fish.
 */

interface Place {
  readonly name: string;
  /** Vessels that it gives its water to, in equal shares. */
  readonly to: readonly string[];
}

/** Vessels one after another, the last gives to the sump; so many cells with the sump. */
export function chain(cells: number): string {
  const places = Array.from({ length: cells - 1 }, (_, i) => ({
    name: `v${i}`,
    to: [i + 2 < cells ? `v${i + 1}` : 'sump'],
  }));
  return systemOf(`chain of ${cells}`, places, ['v0']);
}

/** Vessels in rows twice as long as they are many; water runs right and down; the corner gives to the sump. */
export function mesh(cells: number): string {
  const rows = Math.max(2, Math.round(Math.sqrt(cells / 2)));
  const columns = Math.floor((cells - 1) / rows);
  const name = (row: number, column: number): string => `v${row}-${column}`;
  const places = Array.from({ length: rows * columns }, (_, i): Place => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const right = column + 1 < columns ? [name(row, column + 1)] : [];
    const down = row + 1 < rows ? [name(row + 1, column)] : [];
    const to = [...right, ...down];
    return { name: name(row, column), to: to.length > 0 ? to : ['sump'] };
  });
  return systemOf(`mesh of ${rows * columns + 1}`, places, [name(0, 0)]);
}

function systemOf(title: string, places: readonly Place[], fed: readonly string[]): string {
  const flow = 2 * places.length;
  const gravity = places.flatMap(({ name, to }) =>
    to.map(
      (next) => `  - { from: ${name}, to: ${next}${to.length > 1 ? `, share: ${100 / to.length} %` : ''} }`,
    ),
  );
  const cohorts = places.filter((_, i) => i % 8 === 0).map(({ name }) => fish(`fish-${name}`, name));
  return [
    ...head(title),
    'vessels:',
    '  sump: { kind: sump, volume: 2 m3, area: 1 m2, aeration: 2 1/h }',
    ...places.map(({ name }) => vessel(name, 'biofilter', 1)),
    ...loop(fed, flow),
    ...gravity,
    'fish:',
    ...cohorts,
    ...start,
  ].join('\n');
}

/** A farm of so many tanks and beds: sump > tanks > settler > biofilter > beds > sump. */
export function farm(tanks: number, beds: number): string {
  const named = (word: string, count: number): string[] =>
    Array.from({ length: count }, (_, i) => `${word}-${i + 1}`);
  const tankNames = named('tank', tanks);
  const bedNames = named('bed', beds);
  return [
    ...head(`farm of ${tanks} tanks and ${beds} beds`),
    'vessels:',
    '  sump: { kind: sump, volume: 20 m3, area: 10 m2 }',
    '  settler: { kind: settler, volume: 6 m3, area: 6 m2, capture: 60 % }',
    vessel('biofilter', 'biofilter', 6),
    ...tankNames.map((name) => `  ${name}: { kind: fish-tank, volume: 2 m3, area: 2 m2, aeration: 5 1/h }`),
    ...bedNames.map((name) => `  ${name}: { kind: raft-bed, volume: 2 m3, area: 8 m2, aeration: 3 1/h }`),
    ...loop(tankNames, 40 * tanks),
    ...tankNames.map((name) => `  - { from: ${name}, to: settler }`),
    '  - { from: settler, to: biofilter }',
    ...bedNames.map((name) => `  - { from: biofilter, to: ${name}, share: ${100 / beds} % }`),
    ...bedNames.map((name) => `  - { from: ${name}, to: sump }`),
    'fish:',
    ...tankNames.map((name) => fish(`fish-${name}`, name)),
    'plantings:',
    ...bedNames.map(
      (name) =>
        `  crop-${name}: { in: ${name}, crop: lettuce-butterhead, area: 8 m2, batches: 2, light: 30 mol/m2/d }`,
    ),
    'dosing:',
    `  - { into: sump, product: potassium-bicarbonate, mass: ${beds * 100} g, every: 7 d }`,
    ...start,
  ].join('\n');
}

function head(title: string): readonly string[] {
  return [
    `title: ${title}`,
    'note: Made up for measuring.',
    'days: 10',
    'start-date: 2025-10-01',
    'climate: { water-temperature: 24 degC, et0: 3 mm/d }',
    'waters: { mains: { nitrate: 2 mg N/L, alkalinity: 140 mg/L as CaCO3, pH: 7.7, chloride: 35 mg/L } }',
  ];
}

function vessel(name: string, kind: string, size: number): string {
  return `  ${name}: { kind: ${kind}, volume: ${size * 0.5} m3, area: ${size * 0.6} m2, media: { type: moving-bed-carrier, volume: ${size * 100} L }, aeration: 5 1/h }`;
}

function loop(fed: readonly string[], flow: number): readonly string[] {
  return [
    'reservoir: sump',
    'pumps: { main: { inlet: 200 L, restart: 300 L } }',
    'top-up: { level: 1.8 m3, rate: 100 L/min, from: [{ water: mains }] }',
    'flows:',
    ...fed.map((name) => `  - { from: sump, to: ${name}, pump: main, rate: ${flow / fed.length} m3/d }`),
  ];
}

function fish(name: string, tank: string): string {
  return `  ${name}: { in: ${tank}, species: nile-tilapia, number: 20, mass: 200 g, feed: grower-32, ration: 40 g/d }`;
}

const start = [
  'start:',
  '  biofilm: cycled',
  '  water: { like: mains, ammonia: 0.5 mg N/L, nitrite: 0.2 mg N/L, alkalinity: 100 mg/L as CaCO3, pH: 7.3 }',
] as const;
