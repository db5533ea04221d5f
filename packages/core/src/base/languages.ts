/** Languages in which results may be told, by tag (BCP 47); their words stand in `@leat/view`. */
export const languages = /* @__PURE__ */ Object.freeze(['en', 'es'] as const);

/** A language in which results may be told. */
export type Language = (typeof languages)[number];
