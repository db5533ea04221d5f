/** Files that come with the command, by name, and the schema of the system file: put in by the build. */
declare module 'virtual:leat' {
  export const shipped: Readonly<Record<string, string>>;
  export const schema: unknown;
}
