import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Difference, groupParts, InputError, type Moment, why } from '@leat/core';
import { differenceTold, seriesPhrase, type ToldMoment } from '@leat/view/text';
import { compared, display, shown, trouble, words } from '../state/state.js';
import { Table } from './table.js';

function DayField({
  label,
  end,
  day,
  take,
}: {
  label: string;
  end: number;
  day: string;
  take: (day: string) => void;
}): JSX.Element {
  return (
    <label>
      {label}
      <input
        type="number"
        min={0}
        max={end}
        value={day}
        onChange={({ currentTarget }) => take(currentTarget.value)}
      />
    </label>
  );
}

type Moments = readonly [Moment, Moment];

const toldMoments = (moments: Moments): readonly [ToldMoment, ToldMoment] => {
  const told = ({ run, day }: Moment): ToldMoment => ({ startDate: run.model.scenario.startDate, day });
  return [told(moments[0]), told(moments[1])];
};

interface Found {
  readonly difference: Difference;
  readonly moments: Moments;
  readonly oneRun: boolean;
}

/** The answer in a sentence, and through what in a table. */
function Told({ difference, moments, oneRun }: Found): JSX.Element {
  const how = display.value;
  const { why: phrases } = how.words;
  const { answer, unit, rows, total } = differenceTold(
    difference,
    groupParts(difference.parts),
    toldMoments(moments),
    { oneRun },
    how,
  );
  return (
    <div aria-live="polite">
      <p class="answer">{answer}</p>
      {rows.length > 0 && (
        <Table
          caption={words.value.part}
          head={[words.value.part, unit, phrases.ofAll]}
          rows={[
            ...rows.map(({ name, value, share }) => [name, value, share]),
            [phrases.difference, total, ''],
          ]}
        />
      )}
    </div>
  );
}

/** What made a quantity differ between two days of a run, or between two runs. */
export function Why(): JSX.Element | null {
  const [of, choose] = useState('');
  const [days, span] = useState<readonly [string, string]>(['0', '']);
  const [found, find] = useState<Found | undefined>(undefined);
  const told = words.value;
  const run = shown.value?.summary;
  if (run === undefined) return <p class="note">{told.none}</p>;
  const { series, time, keys } = run.account;
  const end = time[time.length - 1];
  const name = of === '' ? keys[0] : of;
  const split = (between: 'days' | 'runs'): void => {
    const [own, other] = [run.system?.run, compared.value?.summary.system?.run];
    if (own === undefined) return;
    try {
      const to = days[1] === '' ? end : Number(days[1]);
      const last = Math.min(end, other === undefined ? end : other.samples[other.samples.length - 1].time);
      const oneRun = between === 'days' || other === undefined;
      const moments = oneRun
        ? ([
            { run: own, day: Number(days[0]) },
            { run: own, day: to },
          ] as const)
        : ([
            { run: own, day: last },
            { run: other, day: last },
          ] as const);
      find({ difference: why(name, ...moments, { around: 'system' }), moments, oneRun });
      trouble.value = '';
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      find(undefined);
      trouble.value = error.message;
    }
  };
  return (
    <>
      <div class="row">
        <label>
          {told.quantity}
          <select id="why-of" value={name} onChange={({ currentTarget }) => choose(currentTarget.value)}>
            {series.map((each) => (
              <option key={each.name} value={each.name}>
                {seriesPhrase(each.name, display.value)}
              </option>
            ))}
          </select>
        </label>
        <DayField label={told.fromDay} end={end} day={days[0]} take={(day) => span([day, days[1]])} />
        <DayField
          label={told.toDay}
          end={end}
          day={days[1] === '' ? String(end) : days[1]}
          take={(day) => span([days[0], day])}
        />
        <button type="button" id="why" onClick={() => split('days')}>
          {told.why}: {told.whyWith}
        </button>
        {compared.value !== undefined && (
          <button type="button" id="why-runs" onClick={() => split('runs')}>
            {told.why}: {told.whyOther}
          </button>
        )}
      </div>
      {found !== undefined && <Told {...found} />}
    </>
  );
}
