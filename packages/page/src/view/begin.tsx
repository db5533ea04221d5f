import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { shipped } from 'virtual:leat';
import { questionOf } from '@leat/view/text';
import { beginWith, take, write } from '../state/actions.js';
import { beside, log, words } from '../state/state.js';
import { Questions } from './questions.js';

const names = Object.keys(shipped)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.slice(0, -'.yaml'.length));

function Files(): JSX.Element | null {
  const { files, remove, asSystem } = words.value;
  const all = [
    ...beside.value.keys(),
    ...(log.value !== undefined && !beside.value.has(log.value.name) ? [log.value.name] : []),
  ];
  if (all.length === 0) return null;
  const drop = (name: string): void => {
    const rest = new Map(beside.value);
    rest.delete(name);
    beside.value = rest;
    if (log.value?.name === name) log.value = undefined;
  };
  return (
    <section class="files">
      <h3>{files}</h3>
      <ul>
        {all.map((name) => (
          <li key={name}>
            <span>{name}</span>
            {/\.ya?ml$/i.test(name) && (
              <button type="button" class="quiet" onClick={() => write(beside.value.get(name) ?? '', name)}>
                {asSystem(name)}
              </button>
            )}
            <button type="button" class="quiet" onClick={() => drop(name)}>
              {remove(name)}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Ways to begin: a what-if, files, or the questions. */
export function Begin(): JSX.Element {
  const [chosen, choose] = useState('');
  const { begin, what, whatNone, whatIf, drop, dropHelp, form } = words.value;
  return (
    <section aria-labelledby="begin">
      <h2 id="begin">{begin}</h2>
      <label>
        {what}
        <select
          id="what-if"
          value={chosen}
          onChange={({ currentTarget: { value } }) => {
            choose(value);
            if (value !== '') void beginWith(value);
          }}
        >
          <option value="">{whatNone}</option>
          {names.map((name) => (
            <option key={name} value={name}>
              {whatIf(name, questionOf(shipped[`${name}.yaml`]))}
            </option>
          ))}
        </select>
      </label>
      <label class="button">
        {drop}
        <input
          id="files"
          type="file"
          multiple
          onChange={({ currentTarget }) => {
            void take([...(currentTarget.files ?? [])]);
            currentTarget.value = '';
          }}
        />
      </label>
      <p class="note">{dropHelp}</p>
      <Files />
      <details id="form">
        <summary>{form}</summary>
        <Questions />
      </details>
    </section>
  );
}
