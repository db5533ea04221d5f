import { newMaker } from '@leat/view/pictures';
import { displayFor } from './display-for.js';
// The build of another language takes its edition in place of this one.
import { edition } from '../text/en/index.js';
import { openPage } from './pages.js';

// The page says in its markup what it is; its words are those of the edition that it was built with.
const { dataset } = document.body;
openPage({
  maker: newMaker(document, displayFor(edition.frame.language)),
  edition,
  page: dataset['page'] ?? 'all',
  main: document.querySelector('main') ?? document.body,
  hash: () => location.hash.slice(1),
  changed: (act) => window.addEventListener('hashchange', act),
});
