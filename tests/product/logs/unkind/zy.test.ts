import { it } from 'vitest';
import { simulateUnkind, truthOf } from './simulator.js';
it('x', () => {
  for (let seed = 1; seed <= 14; seed++) {
    const c = simulateUnkind(seed, truthOf(seed));
    const f = (k: 'ammonia' | 'nitrite' | 'nitrate' | 'pH') => c.filter((_, i) => i % 12 === 0).map((d) => d[k].toFixed(k === 'nitrate' ? 0 : k==='pH' ? 1 : 2)).join(' ');
    console.log(seed, truthOf(seed).startUp, '\nA', f('ammonia'), '\nN', f('nitrite'), '\nX', f('nitrate'), '\np', f('pH'));
  }
});
