// What the lessons use of @observablehq/inputs, which ships no types.
declare module '@observablehq/inputs' {
  export function range(
    extent: readonly [number, number],
    options: { label: string; step: number; value: number },
  ): HTMLFormElement & { value: number };
  export function textarea(options: {
    label: string;
    value: string;
    rows: number;
    submit: boolean;
    monospace: boolean;
  }): HTMLFormElement & { value: string };
}
