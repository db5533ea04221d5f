/** What a name of a law stands for. */
export type Meant =
  | { readonly kind: 'variable'; readonly name: string }
  | { readonly kind: 'condition'; readonly name: string }
  | { readonly kind: 'number'; readonly id: string }
  | { readonly kind: 'given'; readonly name: string };

/** One rate law as docs/model.md shows it. */
export interface Law {
  readonly law: string;
  readonly names: Readonly<Record<string, { readonly id: string }>>;
}

/** Laws by process id. */
export const laws: Readonly<Record<string, Law>>;

/** The rate of a process by its law. */
export function rateByLaw(id: string, look: (meant: Meant) => number): number;

/** Names that a law and its equations use. */
export function namesUsed(law: Law): readonly string[];
