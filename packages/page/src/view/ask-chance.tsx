import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Fit, Forecast } from '@leat/core';
import { plain } from '@leat/view/text';
import { findEnsemble, findFit, findForecast, type PageLog } from '../engine/searches.js';
import { saveFile } from '../files/save.js';
import { run, search } from '../state/actions.js';
import { busy, display, isStale, log, map, shown, textsOf, words } from '../state/state.js';
import { Table } from './table.js';

/** Many runs with numbers drawn from their ranges: bands in the charts, and how often each limit is passed. */
export function Ensemble(): JSX.Element {
  const [members, count] = useState(100);
  const told = words.value;
  const start = async (): Promise<void> => {
    if (shown.value === undefined || isStale.value) await run();
    const before = shown.value;
    if (before === undefined) return;
    const ensemble = await search((watch) => findEnsemble(watch, before.texts, members));
    if (ensemble === undefined) return;
    const { system, ...rest } = before.summary;
    shown.value = { ...before, summary: { ...rest, ...(system && { system }), ensemble } };
  };
  return (
    <div class="row">
      <label>
        {told.members}
        <input
          id="members"
          type="number"
          min={2}
          max={1000}
          value={members}
          onChange={({ currentTarget }) => count(Math.max(2, Math.round(Number(currentTarget.value))))}
        />
      </label>
      <button type="button" id="ensemble" disabled={busy.value !== undefined} onClick={() => void start()}>
        {told.ensemble}
      </button>
    </div>
  );
}

function Fitted({ fit }: { fit: Fit }): JSX.Element {
  const told = words.value;
  const { number } = display.value;
  return (
    <>
      <p class="answer">{told.fitted(fit.readings)}</p>
      <ul class="note">
        {fit.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <Table
        caption={told.fit}
        head={[told.number, told.value, told.band, '', told.learned]}
        rows={fit.numbers.map(({ name, value, low, high, unit, verdict }) => [
          name,
          number(value),
          `${number(low)} - ${number(high)}`,
          unit === '1' ? '' : unit,
          told.learnedKinds[verdict],
        ])}
      />
    </>
  );
}

function Ahead({ forecast }: { forecast: Forecast }): JSX.Element {
  const told = words.value;
  const { number, unit: shownUnit, value } = display.value;
  const { courses, dates, from } = forecast;
  const last = dates.length - 1;
  const days = [...new Set([0, 7, 14, 21, 28, last])].filter((day) => day <= last).sort((a, b) => a - b);
  return (
    <Table
      caption={told.forecastFrom(from)}
      head={[told.quantity, ...days.map((day) => dates[day])]}
      rows={courses.map(({ reads, vessel, unit, truth }) => [
        [`${plain(reads)}, ${vessel}`, shownUnit(unit)].filter((part) => part !== '').join(', '),
        ...days.map((day) => {
          const [low, , middle, , high] = truth[day].map((each) => number(value(each, unit)));
          return `${middle} (${low} - ${high})`;
        }),
      ])}
    />
  );
}

/** A system held against a log of its tests: fitted to it, and what lies ahead. */
export function Logged(): JSX.Element {
  const [found, find] = useState<{ readonly fit: Fit; readonly text: string } | undefined>(undefined);
  const [ahead, look] = useState<Forecast | undefined>(undefined);
  const [days, count] = useState(28);
  const told = words.value;
  if (log.value === undefined) return <p class="note">{told.fitNone}</p>;
  const given: PageLog = { table: log.value.table, ...(map.value && { map: map.value }) };
  const texts = textsOf();
  const isBusy = busy.value !== undefined;
  return (
    <>
      <p>{log.value.name}</p>
      {map.value === undefined && <p class="note">{told.fitGuessed}</p>}
      <button
        type="button"
        id="fit"
        disabled={isBusy}
        onClick={() => void search((watch) => findFit(watch, texts, given)).then(find)}
      >
        {told.fit}
      </button>
      {found !== undefined && (
        <div aria-live="polite">
          <Fitted fit={found.fit} />
          <div class="row">
            <button
              type="button"
              id="save-fit"
              onClick={() => saveFile('fit.json', found.text, 'application/json')}
            >
              {told.saveFit}
            </button>
            <label>
              {told.forecastDays}
              <input
                type="number"
                min={1}
                max={365}
                value={days}
                onChange={({ currentTarget }) =>
                  count(Math.min(365, Math.max(1, Math.round(Number(currentTarget.value)))))
                }
              />
            </label>
            <button
              type="button"
              id="forecast"
              disabled={isBusy}
              onClick={() =>
                void search((watch) => findForecast(watch, texts, given, found.text, days)).then(look)
              }
            >
              {told.forecast}
            </button>
          </div>
          {ahead !== undefined && <Ahead forecast={ahead} />}
        </div>
      )}
    </>
  );
}
