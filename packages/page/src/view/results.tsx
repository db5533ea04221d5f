import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { newMaker } from '@leat/view/pictures';
import { foldedSection, type RunSummary, sectionsFor } from '@leat/view/report';
import { verdictLines } from '@leat/view/text';
import { compared, display, isStale, shown, words } from '../state/state.js';
import { Save } from './save.js';

/** Makes the sections: those that stand open at once, each of the others when the page has time. */
function fill(box: HTMLElement, runs: readonly RunSummary[]): () => void {
  const maker = newMaker(document, display.value);
  const { open, folded } = sectionsFor(runs);
  box.replaceChildren(...open.map((make) => make(maker, runs)));
  const rest = [...folded];
  let timer = setTimeout(function next() {
    const make = rest.shift();
    if (make === undefined) return;
    box.append(foldedSection(maker, make(maker, runs)));
    timer = setTimeout(next, 0);
  }, 0);
  return () => {
    clearTimeout(timer);
  };
}

function Short({ run, several }: { run: RunSummary; several: boolean }): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const { value: told } = display;
  useEffect(() => {
    const { verdict, startDate } = run.account;
    const maker = newMaker(document, display.value);
    const lines = verdictLines(verdict, startDate, told);
    const own = maker.html('ul', { class: 'lines' }, ...lines.map((line) => maker.html('li', {}, line)));
    box.current?.replaceChildren(own);
  }, [run, told]);
  return (
    <>
      {several && (
        <h3>
          {run.letter}: {run.account.title}
        </h3>
      )}
      <div ref={box} />
    </>
  );
}

/** What a run gives: the verdict first, then harvest, water, limits, the system, and the rest folded. */
export function Results(): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const { results, none, verdict, stale } = words.value;
  const run = shown.value;
  const runs = [run, compared.value].flatMap((each) => (each === undefined ? [] : [each.summary]));
  useEffect(() => {
    if (box.current === null || run === undefined) return undefined;
    return fill(box.current, runs);
  }, [run, compared.value, display.value]);
  return (
    <section aria-labelledby="results" class="results">
      <h2 id="results">{results}</h2>
      {run === undefined ? (
        <p class="note">{none}</p>
      ) : (
        <>
          {isStale.value && (
            <p class="warn" role="status">
              {stale}
            </p>
          )}
          <p class="title">{runs.map(({ account }) => account.title).join(' / ')}</p>
          <div class="short">
            <h3>{verdict}</h3>
            {runs.map((each) => (
              <Short key={each.letter} run={each} several={runs.length > 1} />
            ))}
          </div>
          <Save runs={runs} />
          <div ref={box} class="sections" />
        </>
      )}
    </section>
  );
}
