import type { Conditions } from '../process.js';
import type { Values } from '../../model/composition.js';
import { arrhenius } from './limits.js';

/** Oxygen transfer of a vessel, m3 d-1: aeration kLa x volume at the standpipe + velocity x open surface. */
export function oxygenTransfer(values: Values, at: Conditions): number {
  return (
    arrhenius(values.value('gas.theta'), at.temperature) *
    (at.aeration * at.volume + values.value('gas.surface-velocity') * at.open)
  );
}
