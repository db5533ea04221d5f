import { powerOfTwo } from '../../base/elementary.js';
import { joeKuo } from './joe-kuo.generated.js';

const bits = 32;
const published = joeKuo.split(',');

/** Dimensions that the direction numbers reach to. */
export const sobolDimensions = published.length + 1;

/** The 32 direction numbers of a dimension (0-based), as whole numbers over 2^32. */
function directionsOf(dimension: number): Uint32Array {
  const directions = new Uint32Array(bits);
  if (dimension === 0) return directions.map((_, k) => powerOfTwo(bits - 1 - k));
  const [a, ...m] = published[dimension - 1].split(' ').map(Number);
  const degree = m.length;
  for (let k = 0; k < bits; k++) {
    if (k < degree) {
      directions[k] = m[k] * powerOfTwo(bits - 1 - k);
      continue;
    }
    let v = directions[k - degree] ^ (directions[k - degree] >>> degree);
    for (let j = 1; j < degree; j++) if ((a >>> (degree - 1 - j)) & 1) v ^= directions[k - j];
    directions[k] = v;
  }
  return directions;
}

/**
 * The Sobol sequence with the direction numbers of Joe and Kuo (2008), in the order of the Gray code
 * (Antonov and Saleev 1979).
 * @param dimensions 1 to `sobolDimensions`; RangeError otherwise
 * @returns the point of an index (0 to 2^32 - 1), one whole number over 2^32 for each dimension
 */
export function sobolSequence(dimensions: number): (index: number) => Uint32Array {
  if (!(Number.isInteger(dimensions) && dimensions >= 1 && dimensions <= sobolDimensions))
    throw new RangeError(`Sobol points have 1 to ${sobolDimensions} dimensions; got ${dimensions}`);
  const directions = Array.from({ length: dimensions }, (_, dimension) => directionsOf(dimension));
  return (index) => {
    const gray = (index ^ (index >>> 1)) >>> 0;
    return Uint32Array.from(directions, (each) => {
      let point = 0;
      for (let k = 0, left = gray; left > 0; k++, left >>>= 1) if (left & 1) point ^= each[k];
      return point >>> 0;
    });
  };
}
