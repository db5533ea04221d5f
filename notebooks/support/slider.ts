import { range } from '@observablehq/inputs';

/** A slider: what it sets, from where to where, in which steps. */
export interface SliderOptions {
  readonly label: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly value: number;
}

/** A labelled slider whose value follows the finger; the name is for the check of the lessons. */
export function slider(name: string, options: SliderOptions): HTMLElement & { value: number } {
  const { label, unit, from, to, step, value } = options;
  const form = range([from, to], { label: `${label}, ${unit}`, step, value });
  form.dataset['slider'] = name;
  for (const input of form.querySelectorAll('input')) {
    input.setAttribute('aria-label', `${label}, ${unit}${input.type === 'range' ? ' (slider)' : ''}`);
  }
  return form;
}
