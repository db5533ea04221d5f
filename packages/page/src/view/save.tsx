import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { RunSummary } from '@leat/view/report';
import { csvOf, jsonText, reportText, saveFile, stateText } from '../files/save.js';
import { display, words } from '../state/state.js';

const plainName = (file: string): string => file.replace(/\.ya?ml$/i, '');

/** Buttons that give what was found as files. */
export function Save({ runs }: { runs: readonly RunSummary[] }): JSX.Element {
  const { save, saveReport, saveCsv, saveJson, saveState } = words.value;
  const [first] = runs;
  const name = plainName(first.file);
  const button = (text: string, id: string, give: () => void): JSX.Element => (
    <button type="button" id={id} onClick={give}>
      {text}
    </button>
  );
  return (
    <div class="row" role="group" aria-label={save}>
      <span>{save}</span>
      {button(saveReport, 'save-report', () =>
        saveFile(`${name}.html`, reportText(runs, display.value), 'text/html'),
      )}
      {button(saveCsv, 'save-csv', () => saveFile(`${name}.csv`, csvOf(first), 'text/csv'))}
      {button(saveJson, 'save-json', () => saveFile(`${name}.json`, jsonText(first), 'application/json'))}
      {button(saveState, 'save-state', () =>
        saveFile(`${name}.state.json`, stateText(first), 'application/json'),
      )}
    </div>
  );
}

/** The system as a file, as a link, and in the browser. */
export function Keep({
  text,
  file,
  link,
  keep,
}: {
  text: string;
  file: string;
  link: () => string;
  keep: (yes: boolean) => void;
}): JSX.Element {
  const [made, make] = useState('');
  const { saveSystem, link: linkText, linkMade, linkLong, keep: keepText, keepHelp } = words.value;
  return (
    <div class="row">
      <button type="button" id="save-system" onClick={() => saveFile(file, text, 'text/yaml')}>
        {saveSystem}
      </button>
      <button
        type="button"
        id="link"
        onClick={() => {
          const address = link();
          make(address);
          void navigator.clipboard?.writeText(address).catch(() => undefined);
        }}
      >
        {linkText}
      </button>
      <label class="check">
        <input type="checkbox" id="keep" onChange={({ currentTarget }) => keep(currentTarget.checked)} />
        {keepText}
        <small>{keepHelp}</small>
      </label>
      {made !== '' && (
        <p class="note" role="status">
          {linkMade} <input readOnly aria-label={linkMade} value={made} />{' '}
          {made.length > 8000 ? linkLong : ''}
        </p>
      )}
    </div>
  );
}
