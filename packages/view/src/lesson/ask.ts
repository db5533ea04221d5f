import type { Maker } from '../pictures/document.js';
import { fill, numberText, plainly } from './fill.js';
import { slider, type SliderRange, type SliderWords } from './slider.js';
import type { LessonFrame } from './words.js';

/** A number to be guessed, with what the run says and how near counts as right. */
export interface AskedNumber extends SliderRange {
  readonly kind: 'number';
  /** What the model says. */
  readonly right: number;
  /** Decimals of the reply. */
  readonly decimals: number;
  /** A guess no further off than this is right. */
  readonly near: number;
}

/** Answers to pick from, with the place of the one that the run bears out. */
export interface AskedPick {
  readonly kind: 'pick';
  readonly right: number;
}

export type Ask = AskedNumber | AskedPick;

/** The words of a question. */
export interface AskWords {
  readonly ask: string;
  readonly guess?: SliderWords;
  readonly choices?: readonly string[];
  /** What is said to each pick, beside right or wrong. */
  readonly replies?: readonly string[];
}

/** What was guessed: a number, or the place of a pick; whether it was right, and the words that say so. */
export interface Guess {
  readonly value: number;
  readonly right: boolean;
  readonly reply: readonly Node[];
}

function replyTo(maker: Maker, ask: Ask, words: AskWords, frame: LessonFrame, value: number): Guess {
  if (ask.kind === 'number') {
    const off = value - ask.right;
    const right = Math.abs(off) <= ask.near;
    const reply = right ? frame.near : off > 0 ? frame.tooHigh : frame.tooLow;
    const decimals =
      [0, 1, 2, 3].find((each) => Number.isInteger(Number((ask.step * 10 ** each).toFixed(9)))) ?? 3;
    return {
      ...{ value, right },
      reply: fill(
        maker,
        reply,
        {
          guess: numberText(value, decimals, frame.language),
          right: [ask.right, ask.decimals],
          unit: words.guess?.unit ?? '',
        },
        frame.language,
      ),
    };
  }
  const { choices = [], replies = [] } = words;
  const right = value === ask.right;
  const said = plainly(right ? frame.rightPick : frame.wrongPick, {
    guess: choices[value],
    right: choices[ask.right],
  });
  return { value, right, reply: [maker.document.createTextNode(`${said} ${replies[value] ?? ''}`)] };
}

function choicesOf(maker: Maker, choices: readonly string[], chosen: (value: number) => void): HTMLElement {
  const name = maker.id();
  const box = maker.html('div', { class: 'answers' });
  choices.forEach((text, i) => {
    const radio = maker.html('input', { type: 'radio', name, value: i });
    radio.addEventListener('change', () => chosen(i));
    box.append(maker.html('label', {}, radio, ' ', text));
  });
  return box;
}

/**
 * A question to be answered before anything is shown. The button is dead until there is an answer; `told` hears of each
 * answer that the button, or a further pick after it, gives, and may judge it when it can.
 */
export function predict(
  maker: Maker,
  ask: Ask,
  words: AskWords,
  frame: LessonFrame,
  told: (judge: () => Guess) => void,
): HTMLElement {
  const button = maker.html('button', { type: 'button' }, frame.show);
  let value: number | undefined = ask.kind === 'number' ? ask.value : undefined;
  let answered = false;
  const tell = (): void => {
    const given = value;
    if (given !== undefined) told(() => replyTo(maker, ask, words, frame, given));
  };
  const take = (given: number): void => {
    value = given;
    button.removeAttribute('disabled');
    if (answered) tell();
  };
  if (value === undefined) button.setAttribute('disabled', '');
  button.addEventListener('click', () => {
    answered = true;
    tell();
  });
  const field =
    ask.kind === 'number'
      ? slider(maker, ask, words.guess ?? { label: '', unit: '' }, frame, take).element
      : choicesOf(maker, words.choices ?? [], take);
  return maker.html(
    'div',
    { class: 'predict', role: 'group', 'aria-label': frame.predictFirst },
    maker.html('p', {}, maker.html('strong', {}, frame.predictFirst), ' ', words.ask),
    field,
    button,
  );
}
