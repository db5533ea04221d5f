import type { Maker } from '../../picture/document.js';
import { percent } from '../../render/number.js';
import type { Bands } from '../bands.js';
import type { ToldRun } from '../told-run.js';
import { plain } from '../words.js';
import { bar } from './bars.js';
import { runTitle, section } from './figure.js';
import { limitWords } from './limits-section.js';

function chances(maker: Maker, { limits, members, seed }: Bands, title: readonly Node[]): HTMLElement {
  const rows = [...limits]
    .filter(({ probability }) => probability > 0)
    .sort((a, b) => b.probability - a.probability)
    .map((limit) =>
      maker.html(
        'tr',
        {},
        maker.html('th', { scope: 'row' }, `${limitWords(limit)}, ${limit.place}, for ${plain(limit.whom)}`),
        maker.html('td', { class: 'number' }, percent(limit.probability)),
        maker.html(
          'td',
          { class: 'bar' },
          bar(maker, { value: limit.probability, colour: 'var(--limit)' }, 1, false),
        ),
      ),
    );
  const never = limits.filter(({ probability }) => !(probability > 0)).length;
  const words = `${members} runs, each with numbers drawn from their published ranges (seed ${seed}).`;
  const rest = never === 0 ? '' : ` ${never} limits were passed in none of them.`;
  return maker.html(
    'div',
    {},
    ...title,
    maker.html('p', { class: 'note' }, words, rest),
    ...(rows.length === 0
      ? []
      : [
          maker.html(
            'table',
            { class: 'bars' },
            maker.html('caption', {}, 'Share of the runs in which a limit was passed'),
            maker.html(
              'thead',
              {},
              maker.html(
                'tr',
                {},
                maker.html('th', { scope: 'col' }, 'limit'),
                maker.html('th', { scope: 'col', class: 'number' }, 'share'),
                maker.html('td', {}),
              ),
            ),
            maker.html('tbody', {}, ...rows),
          ),
        ]),
  );
}

/** How sure we are: how likely each limit is passed, for each run that has an ensemble. */
export function chancesSection(maker: Maker, told: readonly ToldRun[]): HTMLElement {
  const parts = told.flatMap(({ bands, letter, account }) =>
    bands === undefined
      ? []
      : [
          chances(
            maker,
            bands,
            told.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : [],
          ),
        ],
  );
  return section(maker, 'sure', 'How sure we are', ...parts);
}
