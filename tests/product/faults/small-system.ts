import { InputError } from '../../../packages/core/src/base/faults.js';
import { readScenario, type ReadOptions } from '../../../packages/core/src/scenario/read-scenario.js';

/** A small system without fault: a tank, a bed and a sump in a ring. Line numbers below refer to it. */
export const smallSystem = `title: Small
days: 30
reservoir: sump
climate:
  water-temperature: 24 degC
  et0: 4 mm/d
waters:
  mains: { nitrate: 1 mg N/L, alkalinity: 2 meq/L, pH: 7.5, chloride: 20 mg/L }
vessels:
  tank: { kind: fish-tank, volume: 1 m3, area: 1 m2, aeration: 3 1/h }
  bed: { kind: raft-bed, volume: 1 m3, area: 4 m2 }
  sump: { kind: sump, volume: 500 L, area: 1 m2 }
pumps:
  main: { inlet: 50 L, restart: 80 L }
flows:
  - { from: sump, to: tank, pump: main, rate: 1 m3/h }
  - { from: tank, to: bed }
  - { from: bed, to: sump }
top-up: { level: 400 L, rate: 5 L/min, from: [mains] }
fish:
  tilapia: { in: tank, species: nile-tilapia, number: 20, mass: 200 g, feed: grower-32, ration: 80 g/d }
plantings:
  lettuce: { in: bed, crop: lettuce-butterhead, area: 4 m2, light: 30 mol/m2/d }
dosing:
  - { into: sump, product: potassium-bicarbonate, mass: 50 g, every: 7 d }
start:
  biofilm: cycled
  water: { like: mains }
actions:
  - { at: 10 d, for: 6 h, pump-off: main }
`;

/** The small system with pieces of its text replaced; each piece must be there. */
export function edited(...edits: readonly (readonly [from: string, to: string])[]): string {
  return edits.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the small system has no ${JSON.stringify(from)}`);
    return text.replace(from, () => to);
  }, smallSystem);
}

/** The messages of a text that must be refused, one a fault. */
export function messagesOf(text: string, options: Partial<ReadOptions> = {}): string[] {
  try {
    readScenario(text, { file: 'small.yaml', ...options });
  } catch (error) {
    if (error instanceof InputError) return error.message.split('\n');
    throw error;
  }
  throw new Error('the text was accepted');
}
