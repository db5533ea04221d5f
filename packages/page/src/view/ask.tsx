import type { JSX } from 'preact';
import { Compare } from './ask-compare.js';
import { Why } from './ask-why.js';
import { Advise, Plan, Size } from './ask-change.js';
import { Ensemble, Logged } from './ask-chance.js';
import { words } from '../state/state.js';

/** Questions about the system that take more than one run. */
export function Ask(): JSX.Element {
  const { ask, compare, why, size, plan, advise, ensemble, fit } = words.value;
  const parts = [
    { id: 'compare', title: compare, body: <Compare /> },
    { id: 'why', title: why, body: <Why /> },
    { id: 'advise', title: advise, body: <Advise /> },
    { id: 'size', title: size, body: <Size /> },
    { id: 'plan', title: plan, body: <Plan /> },
    { id: 'ensemble', title: ensemble, body: <Ensemble /> },
    { id: 'fit', title: fit, body: <Logged /> },
  ];
  return (
    <section aria-labelledby="ask">
      <h2 id="ask">{ask}</h2>
      {parts.map(({ id, title, body }) => (
        <details key={id} id={`ask-${id}`} class="fold">
          <summary>{title}</summary>
          <div class="asked">{body}</div>
        </details>
      ))}
    </section>
  );
}
