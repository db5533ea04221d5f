import type { Maker } from '../pictures/document.js';
import type { LessonFrame } from './words.js';

/** A slider: what it sets, from where to where, in which steps, and where it stands first. */
export interface SliderRange {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly value: number;
}

/** Words of a slider. */
export interface SliderWords {
  readonly label: string;
  readonly unit: string;
}

/** A slider on the page. */
export interface Slider {
  readonly element: HTMLElement;
  /** Where it stands. */
  readonly value: () => number;
}

/** A labelled slider with a field for its number; `moved` hears of each value while it moves. */
export function slider(
  maker: Maker,
  { name, from, to, step, value: first }: SliderRange,
  { label, unit }: SliderWords,
  { sliderHint }: Pick<LessonFrame, 'sliderHint'>,
  moved: (value: number) => void,
): Slider {
  let value = first;
  const id = maker.id();
  const text = unit === '' ? label : `${label}, ${unit}`;
  const limits = { min: from, max: to, step, value: first };
  const range = maker.html('input', {
    ...{ type: 'range', 'aria-label': `${text} (${sliderHint})`, ...limits },
  }) as HTMLInputElement;
  const field = maker.html('input', { ...{ type: 'number', id, ...limits } }) as HTMLInputElement;
  const take = (source: HTMLInputElement, other: HTMLInputElement): void => {
    const given = Number(source.value);
    // What is being typed may not be a number of the slider yet.
    if (source.value === '' || !Number.isFinite(given) || given < from || given > to) return;
    value = given;
    other.value = source.value;
    moved(value);
  };
  range.addEventListener('input', () => take(range, field));
  field.addEventListener('input', () => take(field, range));
  return {
    element: maker.html(
      'div',
      { class: 'slider', 'data-slider': name },
      maker.html('label', { for: id }, text),
      maker.html('div', {}, field, range),
    ),
    value: () => value,
  };
}
