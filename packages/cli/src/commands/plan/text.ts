import type { Plan } from '@leat/core/tasks';
import { cautions, type Display, percent, planTold, type ToldTable, verdictLines } from '@leat/view/text';
import { savedDocument } from '../../files/saved-document.js';
import { columns, linesText, wrap } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

const width = 80;

/** A table as lines; what is too long is wrapped under its row. */
const tableLines = ({ title, head, rows, sides }: ToldTable): readonly string[] => [
  ...(title === '' ? [] : [title]),
  ...(head.length > 0
    ? columns([head, ...rows], sides)
    : columns(rows, sides).flatMap((line) => wrap(line, width, '    '))),
];

/** A plan for reading, 80 columns wide. */
export function planText(plan: Plan, display: Display, style: Style): string {
  const { title, keep, ration, tried, held, outcome, startDate } = plan;
  const told = planTold(plan, display);
  const asked = ['nothing harms fish, water or crops', 'the reservoir is never low', ...keep];
  return linesText([
    ...wrap(title, width).map((line) => style.strong(line)),
    ...wrap(
      `conditions: ${asked.join('; ')}${ration === undefined ? '' : `; water within ${ration}`}`,
      width,
      '  ',
    ),
    '',
    style.strong(told.answer),
    ...columns(
      told.quantities.map(({ name, amount, between }) => [`  ${name}`, amount, between]),
      ['left', 'right', 'left'],
    ),
    '',
    ...verdictLines(outcome.verdict, startDate, display).flatMap((line) => wrap(line, width, '  ')),
    '',
    ...tableLines(told.gives),
    ...wrap(told.kept, width, '  '),
    '',
    ...told.start.flatMap((line) => [...wrap(line, width, '  '), '']),
    ...told.calendar.flatMap((table) => [...tableLines(table), '']),
    ...(told.dosers === undefined ? [] : [told.dosers, '']),
    ...wrap(
      `looked for on a grid, then ever nearer about the best two points of it: ${tried} choices were run, ` +
        `${percent(held / tried)} of them keep every condition. None of its neighbours is better; that nothing better ` +
        'lies elsewhere is not proven. A plan holds for the weather, the fish and the crops of the file.',
      width,
      '  ',
    ),
    '',
    ...cautions.flatMap((line) => wrap(line, width, '  ')).map((line) => style.faint(line)),
  ]);
}

/** A plan as one JSON document. */
export function planDocument(plan: Plan): string {
  const { aim, quantities, drawn, ...rest } = plan;
  return savedDocument('leat-plan', {
    ...rest,
    aim: { text: aim.text, unit: aim.unit },
    quantities: quantities.map(({ name, unit, from, to, steps, value }) => ({
      name,
      unit,
      from,
      to,
      steps,
      value,
    })),
    drawn: drawn.map(({ holds, outcome }) => ({ holds, outcome })),
    cautions,
  });
}
