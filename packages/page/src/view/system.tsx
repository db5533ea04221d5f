import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { effect } from '@preact/signals';
import { describeFault } from '@leat/core';
import { newMaker } from '@leat/view/pictures';
import { systemPictures } from '@leat/view/report';
import { SystemEditor } from '../editor/editor.js';
import { write } from '../state/actions.js';
import { display, faults, looked, main, numbers, text, words } from '../state/state.js';

let editor: SystemEditor | undefined;

/** Lets a slider turn the number that the cursor is put on. */
function onCursor(at: number): void {
  const found = numbers.value.find(({ file, from, to }) => file === undefined && from <= at && at <= to);
  if (found !== undefined) chosen?.(found.path);
}

let chosen: ((path: string) => void) | undefined;

/** Hears of the number that the cursor is put on. */
export function onNumber(hear: (path: string) => void): void {
  chosen = hear;
}

function Editor(): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (box.current === null) return undefined;
    const own = new SystemEditor(box.current, text.value, words.peek().text, {
      onText: (now) => {
        if (now !== text.peek()) write(now);
      },
      onCursor,
    });
    editor = own;
    const ends = [effect(() => own.write(text.value)), effect(() => own.tell(faults.value, main.value))];
    return () => {
      for (const end of ends) end();
      own.end();
    };
  }, []);
  return <div class="editor" ref={box} />;
}

function Faults(): JSX.Element {
  const { sound, faults: head } = words.value;
  const found = faults.value;
  if (found.length === 0)
    return (
      <p class="note" role="status">
        {sound}
      </p>
    );
  return (
    <div class="faults" role="status">
      <p class="warn">{head(found.length)}</p>
      <ul>
        {found.slice(0, 20).map((fault) => (
          <li key={describeFault(fault)}>
            <button
              type="button"
              class="quiet"
              onClick={() => editor?.show(fault.file === main.value ? (fault.line ?? 1) : 1)}
            >
              {describeFault(fault)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Drawn(): JSX.Element | null {
  const box = useRef<HTMLElement>(null);
  const drawn = looked.value?.drawn;
  useEffect(() => {
    if (drawn !== undefined)
      box.current?.replaceChildren(...systemPictures(newMaker(document, display.value), drawn));
  }, [drawn, display.value]);
  return drawn === undefined ? null : <figure class="system" ref={box} aria-label={words.value.drawn} />;
}

/** The text of the system, its faults, and its drawing. */
export function System(): JSX.Element {
  const { system, textHelp } = words.value;
  return (
    <section aria-labelledby="system-text">
      <h2 id="system-text">{system}</h2>
      <p class="file">{main.value}</p>
      <Editor />
      <pre class="printed" aria-hidden="true" />
      <p class="note">{textHelp}</p>
      <Faults />
      <Drawn />
    </section>
  );
}
