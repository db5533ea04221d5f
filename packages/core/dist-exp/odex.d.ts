export { explicit as odex } from './solve/explicit.js';
//# sourceMappingURL=odex.d.ts.map