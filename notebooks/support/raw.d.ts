// A file as text, by the bundler.
declare module '*?raw' {
  const text: string;
  export default text;
}
