/** Forms of a word by how many there are; a language that has more than two gives more. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string };

/** The form of a word by number, by the rules of a language (BCP 47): `plural('es')(2, { one: 'pez', other: 'peces' })`. */
export function plural(language: string): (count: number, forms: Forms) => string {
  const rules = new Intl.PluralRules(language);
  return (count, forms) => forms[rules.select(count)] ?? forms.other;
}
