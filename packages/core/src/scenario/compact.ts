/** The same keys, where those that may be undefined may only be absent. */
export type Compact<T> = { [Key in keyof T as undefined extends T[Key] ? never : Key]: T[Key] } & {
  [Key in keyof T as undefined extends T[Key] ? Key : never]?: Exclude<T[Key], undefined>;
};

/** Leaves out the keys whose value is undefined. */
export function compact<T extends object>(value: T): Compact<T> {
  return Object.fromEntries(Object.entries(value).filter(([, item]) => item !== undefined)) as Compact<T>;
}
