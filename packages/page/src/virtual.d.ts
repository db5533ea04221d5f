/** Files that come with the command, by name: put in by the build. */
declare module 'virtual:leat' {
  export const shipped: Readonly<Record<string, string>>;
}
