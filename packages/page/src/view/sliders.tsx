import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { RunAccount } from '@leat/core';
import { verdictLines } from '@leat/view/text';
import { sliderRange } from '../editor/numbers.js';
import { putTurned, run, turn } from '../state/actions.js';
import { display, numbers, shown, tried, turned, words } from '../state/state.js';
import { onNumber } from './system.js';
import { NumberChoice } from './number-choice.js';
import { PairChart } from './pair-chart.js';

function Verdict({ title, account }: { title: string; account: RunAccount }): JSX.Element {
  const lines = verdictLines(account.verdict, account.startDate, display.value);
  return (
    <div class="card">
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

/** A slider on a number of the text, and what the run gives with it beside what it gave first. */
export function Sliders(): JSX.Element {
  const { sliders, slidersHelp, slider, sliderPut, sliderBack, first, turned: turnedText } = words.value;
  const [path, choose] = useState('');
  useEffect(() => {
    onNumber(choose);
  }, []);
  const number = numbers.value.find((each) => each.path === path);
  const value = turned.value?.number.path === path ? turned.value.value : number?.value;
  const moved = (to: number): void => {
    if (number === undefined || Number.isNaN(to)) return;
    turn(number, to);
  };
  const base = shown.value?.summary.account;
  return (
    <section aria-labelledby="sliders">
      <h2 id="sliders">{sliders}</h2>
      <p class="note">{slidersHelp}</p>
      <NumberChoice
        id="number"
        label={slider}
        path={path}
        choose={(to) => {
          choose(to);
          if (shown.value === undefined) void run();
        }}
      />
      {number !== undefined && value !== undefined && (
        <div class="row slider">
          <input
            id="slider"
            type="range"
            aria-label={`${number.path} ${number.unit}`}
            {...sliderRange(number)}
            value={value}
            onInput={({ currentTarget }) => moved(Number(currentTarget.value))}
          />
          <span class="amount">
            <input
              type="number"
              step="any"
              aria-label={`${number.path} ${number.unit}`}
              value={value}
              onChange={({ currentTarget }) => moved(Number(currentTarget.value))}
            />
            {number.unit}
          </span>
          <button type="button" id="put-turned" disabled={value === number.value} onClick={putTurned}>
            {sliderPut}
          </button>
          <button
            type="button"
            disabled={value === number.value}
            onClick={() => {
              turned.value = undefined;
              tried.value = undefined;
            }}
          >
            {sliderBack}
          </button>
        </div>
      )}
      {number !== undefined && tried.value !== undefined && base !== undefined && (
        <div class="tried" aria-live="polite">
          <div class="pair">
            <Verdict title={first} account={base} />
            <Verdict title={turnedText} account={tried.value} />
          </div>
          <PairChart first={base} second={tried.value} names={[first, turnedText]} />
        </div>
      )}
    </section>
  );
}
