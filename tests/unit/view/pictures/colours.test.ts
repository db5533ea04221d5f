import { describe, expect, it } from 'vitest';
import { colourNames, darkColours, lightColours, type ColourName, type Colours } from '@leat/view/pictures';

type Rgb = readonly [number, number, number];

/** Linear light of a colour, 0..1. */
function light(hex: string): Rgb {
  const part = (at: number): number => {
    const value = parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [part(1), part(3), part(5)];
}

const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** Contrast by WCAG 2. */
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(light(a)), luminance(light(b))].sort((p, q) => p - q);
  return (high + 0.05) / (low + 0.05);
}

/** How eyes without one kind of cone see linear light (Machado, Oliveira & Fernandes 2009, severity 1). */
const eyes: Readonly<Record<string, readonly Rgb[]>> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Oklab of linear light: distances in it are about as large as they look. */
function oklab([r, g, b]: Rgb): Rgb {
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function apart(a: string, b: string, eye: readonly Rgb[]): number {
  const seen = (hex: string): Rgb => {
    const whole = light(hex);
    const [r, g, b2] = eye.map((row) => row.reduce((sum, share, i) => sum + share * whole[i], 0));
    const held = (value: number): number => Math.min(1, Math.max(0, value));
    return oklab([held(r), held(g), held(b2)]);
  };
  const [p, q] = [seen(a), seen(b)];
  return Math.hypot(...p.map((value, i) => value - q[i]));
}

const words: readonly ColourName[] = [
  'ink',
  'soft',
  'limit',
  'water',
  'pool',
  'fish',
  'crop',
  'biofilm',
  'solids',
];
const lines: readonly ColourName[] = [
  'water',
  'fish',
  'crop',
  'biofilm',
  'solids',
  'limit',
  'ammonia',
  'gas',
  'other',
];
/** Fates that often lie on one another. */
const layers: readonly ColourName[] = ['fish', 'gas', 'pool-pale', 'crop', 'solids'];

describe.each([
  ['light', lightColours],
  ['dark', darkColours],
] as const)('colours on a %s ground', (_, colours: Colours) => {
  it('are all written as six hexadecimal digits', () => {
    for (const name of colourNames) expect(colours[name]).toMatch(/^#[0-9a-f]{6}$/);
  });

  it('let words be read, 4.5 to 1 against what they stand on', () => {
    for (const name of words)
      for (const ground of ['paper'] as const)
        expect(contrast(colours[name], colours[ground]), `${name} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    for (const name of ['ink', 'soft'] as const)
      expect(contrast(colours[name], colours.wash), `${name} on wash`).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colours.paper, colours.water)).toBeGreaterThanOrEqual(4.5);
  });

  it('let lines and marks be seen, 3 to 1', () => {
    for (const name of lines) expect(contrast(colours[name], colours.paper), name).toBeGreaterThanOrEqual(3);
  });

  it.each(Object.keys(eyes))('keep layers that touch apart for %s eyes', (eye) => {
    for (const [i, a] of layers.entries())
      for (const b of layers.slice(i + 1))
        expect(apart(colours[a], colours[b], eyes[eye]), `${a} and ${b}`).toBeGreaterThan(0.08);
  });

  it('keep the line of a course apart from a limit in grey', () => {
    expect(contrast(colours.wash, colours.water)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours.wash, colours.limit)).toBeGreaterThanOrEqual(3);
  });
});
