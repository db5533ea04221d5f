import type { JSX } from 'preact';
import { fragmentOf } from '../files/link.js';
import { bundled, keepSystem, run } from '../state/actions.js';
import { busy, faults, language, main, text, trouble, units, words } from '../state/state.js';
import { languages, metric, type Language } from '@leat/core/units';
import { languageNames } from '../words/index.js';
import { Ask } from './ask.js';
import { Begin } from './begin.js';
import { Results } from './results.js';
import { Keep } from './save.js';
import { Sliders } from './sliders.js';
import { System } from './system.js';

function linkHere(): string {
  const fragment = fragmentOf(bundled());
  history.replaceState(null, '', fragment);
  return `${location.href.split('#')[0]}${fragment}`;
}

function Head(): JSX.Element {
  const { title, lead, language: languageText, units: unitsText, unitNames } = words.value;
  return (
    <header>
      <h1>{title}</h1>
      <p class="kicker">{lead}</p>
      <div class="row">
        <label>
          {languageText}
          <select
            id="language"
            value={language.value}
            onChange={({ currentTarget }) => (language.value = currentTarget.value as Language)}
          >
            {languages.map((each) => (
              <option key={each} value={each} lang={each}>
                {languageNames[each]}
              </option>
            ))}
          </select>
        </label>
        <label>
          {unitsText}
          <select
            id="units"
            value={units.value.system}
            onChange={({ currentTarget: { value } }) =>
              (units.value = { ...metric, system: value === 'us' ? 'us' : 'metric' })
            }
          >
            <option value="metric">{unitNames.metric}</option>
            <option value="us">{unitNames.us}</option>
          </select>
        </label>
      </div>
    </header>
  );
}

function Bar(): JSX.Element {
  const { run: runText, cancel, failed } = words.value;
  const at = busy.value;
  return (
    <div class="bar">
      {at === undefined ? (
        <button
          type="button"
          id="run"
          class="main"
          disabled={faults.value.length > 0 || text.value.trim() === ''}
          onClick={() => void run()}
        >
          {runText}
        </button>
      ) : (
        <button type="button" id="cancel" class="main" onClick={at.cancel}>
          {cancel}
        </button>
      )}
      {at !== undefined && (
        <span class="progress">
          <progress max={1} value={at.share} aria-label={at.text} /> {at.text}
        </span>
      )}
      <div role="status" class="trouble-box">
        {trouble.value !== '' && (
          <p class="warn" id="trouble">
            {failed} {trouble.value}
          </p>
        )}
      </div>
    </div>
  );
}

/** The page: what is to be run on one side, what it gives on the other; on a phone one below the other. */
export function App(): JSX.Element {
  return (
    <>
      <Head />
      <main>
        <div class="own">
          <Begin />
          <System />
          <Bar />
          <Keep text={text.value} file={main.value} link={linkHere} keep={keepSystem} />
        </div>
        <div class="found">
          <Results />
          <Sliders />
          <Ask />
        </div>
      </main>
    </>
  );
}
