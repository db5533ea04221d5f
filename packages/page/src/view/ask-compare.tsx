import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { shipped } from 'virtual:leat';
import { compareWith } from '../state/actions.js';
import { before, busy, words } from '../state/state.js';

const names = Object.keys(shipped).flatMap((name) =>
  name.endsWith('.yaml') ? [name.slice(0, -'.yaml'.length)] : [],
);

/** Puts another run beside the shown one. */
export function Compare(): JSX.Element {
  const [name, choose] = useState('');
  const { compare, whatIf, compareWith: withText, before: beforeText } = words.value;
  return (
    <div class="row">
      <label>
        {withText}
        <select id="compare-with" value={name} onChange={({ currentTarget }) => choose(currentTarget.value)}>
          <option value="">{beforeText}</option>
          {names.map((each) => (
            <option key={each} value={each}>
              {whatIf(each)}
            </option>
          ))}
        </select>
      </label>
      <button
        type="button"
        id="compare"
        disabled={busy.value !== undefined || (name === '' && before.value === undefined)}
        onClick={() => void compareWith(name)}
      >
        {compare}
      </button>
    </div>
  );
}
