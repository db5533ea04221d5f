// The page and its workers run this one script: a worker has no document, and its name says what it does.
import './no-eval.js';
import { render } from 'preact';
import { effect } from '@preact/signals';
import { useModule } from '@leat/core/module';
import { serveJobs, type PagePort } from '@leat/core/workers';
import { serveEngine, type EnginePort } from './engine/engine.js';
import { openSearch } from './engine/searches.js';
import { keptBundle } from './files/kept.js';
import { bundleIn } from './files/link.js';
import { beginWith, look, openBundle, take, warm } from './state/actions.js';
import { display, language, text, trouble, words } from './state/state.js';
import { style } from './style.js';
import { App } from './view/app.js';

function openPage(): void {
  const sheet = document.createElement('style');
  sheet.textContent = style;
  document.head.append(sheet);
  const root = document.getElementById('page');
  if (root === null) throw new Error('no place for the page');
  warm();
  const openLinked = (): boolean => {
    try {
      const linked = bundleIn(location.hash);
      if (linked !== undefined) openBundle(linked);
      return linked !== undefined;
    } catch (error) {
      trouble.value = error instanceof Error ? error.message : String(error);
      return false;
    }
  };
  if (!openLinked()) {
    const kept = keptBundle();
    if (kept !== undefined) openBundle(kept);
    else void beginWith('glasshouse');
  }
  root.replaceChildren();
  render(<App />, root);
  effect(() => {
    document.documentElement.lang = language.value;
    document.title = words.value.title;
  });
  // What the drawing says is said anew.
  let shown = display.peek();
  effect(() => {
    if (display.value === shown) return;
    shown = display.value;
    look(0);
  });
  addEventListener('hashchange', openLinked);
  addEventListener('dragover', (event) => {
    event.preventDefault();
    document.body.classList.add('dropping');
  });
  addEventListener('dragleave', () => {
    document.body.classList.remove('dropping');
  });
  // Taken before the editor hears of it, which would paste the file.
  addEventListener(
    'drop',
    (event) => {
      const files = [...(event.dataTransfer?.files ?? [])];
      document.body.classList.remove('dropping');
      if (files.length === 0) return;
      event.preventDefault();
      event.stopPropagation();
      void take(files);
    },
    { capture: true },
  );
  // The editor scrolls: what is printed is written out.
  addEventListener('beforeprint', () => {
    const printed = document.querySelector('pre.printed');
    if (printed !== null) printed.textContent = text.value;
  });
}

if (typeof document === 'undefined') {
  useModule();
  const port = self as unknown as EnginePort & PagePort & { readonly name: string };
  if (port.name === 'search') serveJobs(port, openSearch as never);
  else serveEngine(port);
} else openPage();
