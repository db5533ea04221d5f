import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { RunAccount } from '@leat/core';
import { type Course, coursePicture, finished, newMaker, pageColours, smallFrame } from '@leat/view/pictures';
import { seriesPhrase } from '@leat/view/text';
import { display, words } from '../state/state.js';

/** A series of an account as a line of a course; no line where it has none. */
function lineOf({ series, time }: RunAccount, name: string, as: string): Pick<Course, 'time' | 'lines'> {
  const found = series.find((each) => each.name === name);
  return { time, lines: found === undefined ? [] : [{ name: as, values: Array.from(found.values) }] };
}

/** A series of two runs in one picture; the reader chooses which. */
export function PairChart({
  first,
  second,
  names,
}: {
  first: RunAccount;
  second: RunAccount;
  names: readonly [string, string];
}): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const [name, choose] = useState(first.keys[0]);
  useEffect(() => {
    const maker = newMaker(document, display.value);
    const [before, now] = [lineOf(first, name, names[0]), lineOf(second, name, names[1])];
    const known = [...before.lines, ...now.lines].flatMap(({ values }) => values).filter(Number.isFinite);
    const [low, high] = [Math.min(...known), Math.max(...known)];
    const room = high > low ? (high - low) * 0.05 : Math.abs(high) * 0.1 || 1;
    const title = `${seriesPhrase(name, display.value)}: ${names[1]} / ${names[0]}`;
    const svg = coursePicture(maker, {
      course: { ...now, limits: [] },
      before,
      vertical: [low - room, high + room],
      horizontal: [0, Math.max(before.time[before.time.length - 1], now.time[now.time.length - 1])],
      startDate: first.startDate,
      colours: pageColours,
      frame: smallFrame,
    });
    box.current?.replaceChildren(finished(maker, svg, { title, description: title }));
  }, [first, second, name, display.value]);
  return (
    <div class="pair-chart">
      <label>
        {words.value.quantity}
        <select value={name} onChange={({ currentTarget }) => choose(currentTarget.value)}>
          {first.series.map((each) => (
            <option key={each.name} value={each.name}>
              {seriesPhrase(each.name, display.value)} ({display.value.unit(each.unit)})
            </option>
          ))}
        </select>
      </label>
      <div ref={box} class="picture" />
    </div>
  );
}
