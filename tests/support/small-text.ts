/** A small system, invented: a tank of tilapia, a filter, a bed of lettuce, a sump. */
export const smallSystem = `title: Small system (invented)
days: 40
start-date: 2025-03-01
reservoir: sump
climate:
  water-temperature: 26 degC
  et0: 4 mm/d
waters:
  mains: { nitrate: 1 mg N/L, alkalinity: 2 meq/L, pH: 7.6, chloride: 30 mg/L }
vessels:
  tank: { kind: fish-tank, volume: 2 m3, area: 2 m2, aeration: 60 1/d }
  filter: { kind: biofilter, volume: 0.3 m3, area: 0.4 m2, surface: 60 m2, aeration: 100 1/d }
  bed: { kind: raft-bed, volume: 1 m3, area: 4 m2 }
  sump: { kind: sump, volume: 0.6 m3, area: 0.8 m2 }
pumps: { main: { inlet: 100 L, restart: 200 L } }
flows:
  - { from: sump, to: tank, pump: main, rate: 2 m3/h }
  - { from: tank, to: filter }
  - { from: filter, to: bed }
  - { from: bed, to: sump }
top-up: { level: 0.55 m3, rate: 1 m3/d, from: [mains] }
fish:
  tilapia: { in: tank, species: nile-tilapia, number: 60, mass: 120 g, ration: 1.5 %/d, feed: grower-32 }
plantings:
  lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, batches: 2, age: 14 d, light: 30 mol/m2/d }
start:
  biofilm: cycled
  water: { like: mains, pH: 7.4, ammonia: 0.5 mg N/L, nitrate: 20 mg N/L }
`;
