/** Files that come with the command, by name: put in by the build. */
declare module 'virtual:leat' {
  export const shipped: Readonly<Record<string, string>>;
}

/** Styles of the editor, as text. */
declare module 'prism-code-editor/layout.css?inline' {
  const css: string;
  export default css;
}
declare module 'prism-code-editor/autocomplete.css?inline' {
  const css: string;
  export default css;
}
