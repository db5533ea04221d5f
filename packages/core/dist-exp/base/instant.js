/** Moments closer than this are one, d (about 10 microseconds). */
export const INSTANT = 1e-10;
//# sourceMappingURL=instant.js.map