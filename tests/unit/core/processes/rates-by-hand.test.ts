import { describe, expect, it } from 'vitest';
import { processes } from '../../../../packages/core/src/processes/index.js';
import { rateOf } from './numbers-by-hand.js';

// M(s, K) = s/(K + s). Oxygen 6.3: 0.9 at K 0.7, 0.875 at 0.9, 6.3/6.5 at 0.2, 6.3/6.8 at 0.5. Five degrees above 20:
// 1.029^5 = 1.1536574, 1.072^5 = 1.4157088, 1.063^5 = 1.3572702, 1.07^5 = 1.4025517, 1.024^5 = 1.1258999.
const warm = { decay: 1.1536574, aob: 1.4157088, nob: 1.3572702, solids: 1.4025517, gas: 1.1258999 };
// Bell of pH 7.6: 1/(1 + 10^-1.0 + 10^-1.9) = 0.8988043.
const bell = 0.8988043;
// Nitrous acid: 0.6 / (1 + 10^(7.6 - 3.25)) = 0.6 / 22388.211 = 2.67998e-5 g/m3.
const nitrous = 2.67998e-5;
// What the cells could do: 1.6/2.0 and 1.6/1.7 of it by carbon, 9.95/10 and 0.2/0.25 by free ammonia, 0.9 are awake.
// The surface of 50 m2 has room for 15 g, by yields of 0.18 and 0.06 in parts of 11.25 and 3.75 g: 4 g and 1 g are 16/45
// and 4/15. 10 g of heterotrophs cover 10/60 of the 0.6 that they may: 0.9 is bare.
const bare = 0.9;
// Still water lets 1.2 x 1.03^5 x 50 = 69.556444 m3/d of TAN through, 1.25 times that of oxygen, 4.5688584 g of it per g N.
const through = 69.556444;
const perOxygen = (1.25 * through) / 4.5688584;
/** Flux F on which transfer k and use agree: k (s - s0) = a s0 / (K + s0) has F = k (s - s0) for a root. */
function flux(s: number, a: number, K: number, k: number): number {
  const b = k * (s - K) - a;
  return k * s - (b + Math.sqrt(b * b + 4 * k * k * K * s)) / 2;
}
// Salt: 0.01 mol/L is half of what halves the one by its square, and halves the other: 0.8 and 0.5.
const aobMost = 0.8 * 0.9 * warm.aob * 0.8 * bell * 0.995 * (0.2 / (0.2 + nitrous)) * 4 * 0.9;
const aob = bare * flux(1.5, flux(6.3, aobMost, 0.5, 0.18 * perOxygen), 0.5, 0.18 * through);
const nobMost = 0.5 * warm.nob * (0.6 / 0.8) * (16 / 17) * bell * 0.8 * (0.05 / (0.05 + nitrous)) * 0.9;
const nob = bare * flux(6.3, nobMost, 0.9, 0.06 * perOxygen);
// Heterotrophs: 1.07^5 as solids; 0.05 g that the water brings; 0.33 g O2 and 1 g COD for 0.67 g of cells.
const heteroMost = 6 * warm.solids * (1.5 / 1.55) * 10.05;
const heteroSupply = flux(6.3, heteroMost, 0.2, (0.67 / 0.33) * 1.25 * through);
// Settled solids, 500 g of 800 g on 4 m2: uptake 0.16 x 1.4025517 x 0.4 x 1.2 = 0.1077160 g O2 per g and day, so that
// oxygen of 6.3 reaches sqrt(2 x 0.00015 x 6.3 x 30000 / 0.1077160) = 22.943 g of what breathes; there are
// sqrt(500 x 800)/4 = 158.11 g/m2, 6.8916 times that: (1 - e^-6.8916)/6.8916 = 0.144957 of it breathes oxygen.
const times = Math.sqrt(500 * 800) / 4 / Math.sqrt(56.7 / (0.16 * warm.solids * 0.48));
const aired = (((1 - Math.exp(-times)) / times) * 6.3) / 6.5;
// The rest is hydrolysed 0.6 as fast and takes 0.16809 g N per g; 0.4 m/d bring the nitrate of 1.6 m3 a day. Taking R g/d
// it is half used at 0.5 + R / 1.6 g/m3.
const airless = 0.6 * 0.16 * warm.solids * (1 - aired) * 500;
const half = 0.5 + (airless * 0.4 * 1.2 * 14.007) / (1.25 * 31.998) / (0.4 * 4);
// The crop: 500 g on 5 m2 are 1 t/ha, where curve and plateau meet: Nc = 0.0365 x 2^(-0.115/4) = 0.035780.
const critical = 0.0365 * 2 ** (-0.115 / 4);
// 14 of 18 degrees above its base: 0.14 a day, two thirds of it in this light, and 0.55 x 10 x 5 x 14/18 = 21.38889 g/d by light; held back by
// (1 - 0.5 Nc x 500/15) / (1 - 0.5). pH 7.6 is 2 above what is good and 1 above what halves: 1 / (1.25 + 0.1).
const grown =
  (1 / 1.35) * 21.388889 * (1 - Math.exp(-140 / 3 / 21.388889)) * ((1 - (critical * 250) / 15) / 0.5);
// The curve falls by b/2 there; half of the arrears a day.
const demand = (0.6 * (1 - 0.0575) * critical + 0.4 * 0.025) * grown + (critical * 500 - 15) / 2;

// Fish of 3.33 g are a thirtieth of 100 g: 30^0.25 = 2.340347. Half way from 15 to 35 degC: sin(pi/4). Oxygen 6.3 of 1.26:
// 25/26. Ammonia, nitrite (a third of 0.6 by chloride of twice 25) and carbon dioxide (0.2143 x 44.009 = 9.43113) each stand
// at 0.4 of what kills: half is eaten by each. All of 105.6 g would be far more: the bend takes 4e-13 of it.
const eaten = 0.04 * 1000 * 2.340347 * Math.SQRT1_2 * (25 / 26) * 0.125;
// Lean body 0.025/0.16 x 1.6 = 0.25, fat of 100 g 0.2; 1.5 x 0.2^2 / 30 = 0.002. Energy: 0.44 x 150 / (37.5 + 2); protein:
// 0.6 x 0.9 x 0.0512 / 0.025 = 1.10592.
const gained = eaten * (66 / 39.5) * (1 + (66 / 39.5 / 1.10592) ** 4) ** -0.25;
// 3 degrees below the reference: 1.07^-3 = 0.81629788. Fat 150 beside 0.05 x 1000: three quarters are burnt of it.
const burnt = 0.5 * 0.006 * 0.8162979 * 0.9 * 2.340347 * 1000;
// 0.4^4 of ln 2 / 4 each, bent below 50; oxygen nine times the lethal: 2.8 / 9^8; cold and heat are 15 degrees away.
const poisoning = (0.0256 * Math.LN2) / 4;
const hazard = 1e-4 + (3 * poisoning * 50) / (50 + poisoning) + 2.8 / 9 ** 8;

describe('the rate of', () => {
  it.each([
    ['feeding', eaten],
    ['uneaten-feed', 110 - eaten],
    ['growing', gained],
    ['excretion', 0.9 * 0.0512 * eaten - 0.025 * gained],
    ['upkeep-fat', 0.75 * burnt],
    ['upkeep', 0.25 * burnt],
    ['mortality', hazard * 1000],
    ['mortality-fat', hazard * 150],
    ['mortality-count', hazard * 300],
    ['mortality-left', hazard * 1000],
    ['mortality-left-fat', hazard * 150],
    ['rot', 0.15 * 40],
    ['rot-fat', 0.15 * 10],
    ['ammonia-oxidation', (aob * 29) / 45],
    ['ammonia-oxidation-idle', (aob * 16) / 45 / 0.18],
    ['nitrite-oxidation', (nob * 11) / 15],
    ['nitrite-oxidation-idle', (nob * 4) / 15 / 0.06],
    ['aob-decay', 0.17 * warm.decay * (6.3 / 6.8) * 4 * bare],
    ['nob-decay', 0.17 * warm.decay * 0.875 * 1 * bare],
    // Grown at 7.6 the flank lies 0.1 ln(1 + e^-1) = 0.0313262 below 6.5; this one is 0.1313262 above that.
    ['acclimating', -0.1313262 / 20],
    ['wakening', 0.3 * (6.3 / 6.8) * 0.1 - 0.1 * (0.5 / 6.8) ** 2 * 0.9],
    ['heterotroph-growth', flux(3, heteroSupply, 20, 0.67 * 0.5 * through)],
    // 1.12^5 = 1.7623417.
    ['heterotroph-loss', 0.62 * 1.7623417 * 10],
    ['solids-hydrolysis', 0.3 * warm.solids * 8],
    ['refractory-hydrolysis', 0.004 * warm.solids * 5],
    ['refractory-sludge-hydrolysis', 0.004 * warm.solids * 300],
    ['sludge-mineralisation', 0.16 * warm.solids * aired * 500],
    ['denitrification', (airless * 6) / (half + 6)],
    ['sludge-fermentation', (airless * half) / (half + 6)],
    ['dissolved-oxidation', 0.5 * warm.solids * (6.3 / 6.5) * (1.5 / 1.6) * 3],
    ['dissolved-denitrification', 0.5 * warm.solids * 0.6 * (0.2 / 6.5) * (1.5 / 1.6) * (6 / 6.5) * 3],
    ['ammonification', 3 * warm.solids * 0.2],
    // 10 m/d on 4 m2 sweep 40 m3/d, in still water; air of 10 1/d in half a metre is half of what halves it: 8/9.
    ['settling', (40 * 8 * 8) / 9],
    // 30 m3/d x 0.6/0.4 = 45 m3/d: of 75 x 8 g that flow in, 45 x 8 g, which is 0.6, are caught.
    ['capture', 45 * 8],
    ['settling-refractory', (40 * 8 * 5) / 9],
    ['capture-refractory', 45 * 5],
    // Two fifths of growth go to fruit of 2.5 % nitrogen.
    ['crop-growing', 0.6 * grown],
    ['fruit-growing', 0.4 * grown],
    // At the pH that halves it ammonium is an eighth at most.
    ['nitrate-uptake', demand * 0.75 * (1 - (0.125 * 1.5) / 2.2)],
    ['tan-uptake', (demand * 0.125 * 1.5) / 2.2],
    // 0.12 mol per mol of what both took, and 1.25/1.3 of that by calcium.
    [
      'calcium-uptake',
      (0.12 / 14.007) * demand * (0.75 * (1 - (0.125 * 1.5) / 2.2) + (0.125 * 1.5) / 2.2) * (1.25 / 1.3),
    ],
    // Saturation 1.25 x 0.4 = 0.5: half of it is wanting, 1.01 x 0.25/0.51. Of 20 mol 0.6005 m2 are active. At 25 degC,
    // by other code: 44.1907 m/d x 2.5119e-5 mol/m3, 0.0298415 m/d x 0.2143 mol/m3, 0.103108 mol/(m2 d) [C].
    [
      'lime-dissolution',
      0.600516 * (44.19066 * 2.511886e-5 + 0.02984145 * 0.2143 + 0.1031076) * ((1.01 * 0.25) / 0.51),
    ],
    // 0.1 beyond the onset of 0.4, on 50 m2: 0.5 x 0.01/0.5.
    ['lime-scale', 0.01],
    // e^(0.13 x 5) = 1.9155408.
    ['ammonia-loss', 0.0566 * 1.9155408 * 3 * 0.05],
    // pH 7.6 is a quarter of the band below 7.7: 1/16 x (3 - 1/2). Alkalinity 1.5 is far below 7.7: all of it.
    ['dosing-by-ph', 40 * 0.15625],
    ['dosing-by-alkalinity', 40],
  ])('%s is what is reckoned by hand', (id, wanted) => {
    expect(rateOf(id) / wanted).toBeCloseTo(1, 6);
  });

  it('every process is reckoned here, exchange with air below', () => {
    const reckoned = processes.filter(({ id }) => Number.isFinite(rateOf(id)));
    expect(reckoned).toHaveLength(processes.length);
  });

  it('oxygen exchange is transfer x (8.263 - c) at 25 degC (Benson & Krause 1980, APHA 4500-O [R], value [C])', () => {
    const transfer = warm.gas * (10 * 2 + 0.7 * 3);
    expect(rateOf('oxygen-exchange') / (transfer * (8.263 - 6.3))).toBeCloseTo(1, 3);
    // Without air stones only the surface is left, without surface only the stones.
    const parts = [{ aeration: 0 }, { open: 0 }].map((at) => rateOf('oxygen-exchange', {}, at));
    expect(parts[0] / (warm.gas * 2.1 * 1.963)).toBeCloseTo(1, 3);
    expect(parts[0] + parts[1]).toBeCloseTo(rateOf('oxygen-exchange'), 10);
  });

  it('carbon dioxide exchange is 0.9 x transfer x (0.0143 - c) at 25 degC, 420 uatm (published.md J4 [C])', () => {
    const transfer = warm.gas * (10 * 2 + 0.7 * 3);
    expect(rateOf('carbon-dioxide-exchange') / (0.9 * transfer * (0.0143 - 0.2143))).toBeCloseTo(1, 3);
  });

  it('drained water takes 1 / 1.0326 of the oxygen it wants from as much air, and loses H / (1 + H) of its carbon dioxide', () => {
    // 4 m3/d at 20 degC: saturation 9.092 g/m3 and 0.016458 mol/m3, H 1.0609 [C]; no more drains than flows in.
    const at = { temperature: 20, flooded: 4, inflow: 10 };
    expect(rateOf('flood-oxygen', {}, at) / ((0.8 * 4 * (9.092 - 6.3)) / 1.0326)).toBeCloseTo(1, 3);
    const lost = 0.8 * 4 * (1.0609 / 2.0609) * (0.016458 - 0.2143);
    expect(rateOf('flood-carbon-dioxide', {}, at) / lost).toBeCloseTo(1, 3);
    const slow = rateOf('flood-oxygen', {}, { ...at, inflow: 1 });
    expect(slow / rateOf('flood-oxygen', {}, at)).toBeCloseTo(0.25, 12);
    expect(rateOf('flood-oxygen', {}, { ...at, inflow: 0 })).toBe(0);
  });

  // At 20 degC: 0.9 s / (0.0326 H), H of CO2 1.0609; (1 - e^-n)/n of the transfer of the air is left (other code [C]).
  it.each([
    [0, 0.9],
    [0.01, 0.79],
    [0.02, 0.7],
    [0.04, 0.56],
    [0.06, 0.46],
    [0.08, 0.38],
    [0.1, 0.32],
  ])(
    'air that gives up %f of its oxygen carries off %f of the transfer of oxygen as carbon dioxide',
    (airShare, wanted) => {
      const at = { temperature: 20, open: 0, airShare };
      const share =
        rateOf('carbon-dioxide-exchange', {}, at) /
        rateOf('carbon-dioxide-exchange', {}, { ...at, airShare: 0 });
      expect(0.9 * share).toBeCloseTo(wanted, 2);
    },
  );

  it('air that gives up all leaves at rest with the water: its flow x CO2 in air over that in water (closed form)', () => {
    // A thousandfold share stands for no end of contact: flow = 10 x 2 / (share / 0.0326), H 1.0609 at 20 degC [C].
    const airShare = 1000;
    const flow = (10 * 2) / (airShare / 0.0326);
    const transfer =
      rateOf('carbon-dioxide-exchange', {}, { temperature: 20, open: 0, airShare }) / (0.016458 - 0.2143);
    expect(transfer / (flow * 1.0609)).toBeCloseTo(1, 3);
  });

  it('thin air holds less of both gases, and a closed house more carbon dioxide', () => {
    const still = { temperature: 20, open: 0, pressure: 0.8, carbonDioxide: 0.0012 };
    const transfer = 10 * 2;
    // 0.039186 mol/L/atm at 20 degC (pKH 1.4069), oxygen by other code [C].
    const rest = 39.186 * 0.0012 * 0.8;
    expect(rateOf('carbon-dioxide-exchange', {}, still) / (0.9 * transfer * (rest - 0.2143))).toBeCloseTo(
      1,
      3,
    );
    expect(rateOf('oxygen-exchange', { oxygen: 0 }, still) / (transfer * 7.2318)).toBeCloseTo(1, 3);
  });

  it('aob-decay without growth halves the cells in ln 2 / (b theta^(T-20)): 4.08 d at 20 degC, 3.53 d at 25', () => {
    const halving = (temperature: number): number =>
      (Math.LN2 * 4) / rateOf('aob-decay', { oxygen: 1e9, heterotrophs: 0 }, { temperature });
    expect(halving(20)).toBeCloseTo(4.077, 3);
    expect(halving(25)).toBeCloseTo(3.534, 3);
  });

  it('feeding and feed not eaten together are the feed offered, whatever the oxygen', () => {
    for (const oxygen of [0, 0.7, 6.3, 50]) {
      expect(rateOf('feeding', { oxygen }) + rateOf('uneaten-feed', { oxygen })).toBeCloseTo(110, 10);
    }
  });

  it('a crop with nitrogen to spare asks for none; one that is bare neither grows nor asks', () => {
    for (const id of ['nitrate-uptake', 'tan-uptake', 'calcium-uptake']) {
      expect(rateOf(id, { 'crop-nitrogen': 100 })).toBe(0);
      expect(rateOf(id, { 'crop-mass': 0 })).toBe(0);
    }
    expect(rateOf('crop-growing', { 'crop-mass': 0 })).toBe(0);
  });

  it('a crop stops at its base temperature and gains nothing above its optimum', () => {
    const growth = (air: number): number => rateOf('crop-growing', {}, { air });
    expect(growth(4)).toBe(0);
    expect(growth(-5)).toBe(0);
    // Both the young plant and the canopy grow by 18 in place of 14 degrees.
    expect(growth(22) / growth(18)).toBeCloseTo(18 / 14, 12);
    expect(growth(30)).toBe(growth(22));
  });

  it('a crop loses 13 % of its growth per dS/m above 1.3 in the extract, and all of it in the end', () => {
    // 0.01 mol/L are 0.8 dS/m in the water, 0.4 in the extract; 0.0575 are 4.6 and 2.3; 0.25 are 20 and 10.
    const growth = (ionic: number): number => rateOf('crop-growing', {}, { ionic });
    expect(growth(0.0575) / growth(0.01)).toBeCloseTo(0.87, 10);
    expect(growth(0.0325)).toBe(growth(0.01));
    expect(growth(0.25)).toBe(0);
  });

  it('a closed canopy grows by its light, a seedling by its mass and less than by its light, neither in the dark', () => {
    const growth = (mass: number, light: number): number =>
      rateOf('crop-growing', { 'crop-mass': mass, 'crop-nitrogen': 0.0365 * mass }, { light });
    // 40/45 over 20/25 of its rate in full light.
    expect(growth(0.05, 40) / growth(0.05, 20)).toBeCloseTo(10 / 9, 3);
    expect(growth(50_000, 40) / growth(50_000, 20)).toBeCloseTo(2, 6);
    expect(growth(500, 0)).toBe(0);
  });
});
