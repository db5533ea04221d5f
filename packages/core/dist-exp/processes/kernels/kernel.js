/** From the place of the pH of a vessel in v to that of its hydrogen ion, mol m-3. */
export const HYDROGEN_AFTER_PH = 4;
//# sourceMappingURL=kernel.js.map