import type { Run } from '../run/run.js';
/**
 * Share of the time and the batches that stand in which a crop held less nitrogen than a share (`limit.crop-nitrogen-low`)
 * of its critical curve: it then grows less for want of it. 0 where nothing stands.
 */
export declare function cropNitrogenShare({ model, samples }: Run): number;
//# sourceMappingURL=crop-nitrogen.d.ts.map