/** Grams per equivalent of quick lime, CaO: 56.077 / 2. */
const limeEquivalent = 28.0385;

/** One German degree of hardness, 10 mg/L of CaO, in eq m-3. */
export const degreeOfHardness = 10 / limeEquivalent;
