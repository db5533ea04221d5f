import type { AdviceOutcome, PlanWeek } from '@leat/core';
import type { Plan } from '@leat/core/tasks';
import {
  cautions,
  dateNames,
  type Display,
  listed,
  percent,
  plain,
  shown,
  valueText,
  verdictLines,
} from '@leat/view/text';
import { savedDocument } from '../../files/saved-document.js';
import { columns, linesText, wrap } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

const width = 80;

/** Names of what is planned, for a person. */
const names: Readonly<Record<string, string>> = { beds: 'planted area', fish: 'fish at the start' };

const amountOf = ({ unit }: { readonly unit: string }, value: number): string =>
  valueText({ unit }, Number(value.toPrecision(4)));

/** Where a choice lies at an end of what was looked at: that what lies beyond was not. */
const endText = ({ value, from, to }: Plan['quantities'][number]): string =>
  value === to ? ': the end of it, more may do' : value === from ? ': the end of it, less may do' : '';

function answerLines(plan: Plan, display: Display, style: Style): readonly string[] {
  const { quantities, aim, amount, holds, outcome, startDate } = plan;
  const head = holds
    ? `Plan for ${aim.text}: ${display.amount(amount, aim.unit)}`.trimEnd()
    : 'No choice keeps every condition. The one that comes nearest:';
  const rows = quantities.map((quantity) => [
    `  ${names[quantity.name] ?? quantity.name}`,
    amountOf(quantity, quantity.value),
    `looked at from ${amountOf(quantity, quantity.from)} to ${amountOf(quantity, quantity.to)}${endText(quantity)}`,
  ]);
  return [
    style.strong(head),
    ...columns(rows, ['left', 'right', 'left']),
    '',
    ...verdictLines(outcome.verdict, startDate, display).flatMap((line) => wrap(line, width, '  ')),
  ];
}

/** Lowest and highest of a number in the draws. */
function bandOf(plan: Plan, value: (outcome: AdviceOutcome) => number): string {
  const values = plan.drawn.flatMap(({ outcome }) => (outcome === undefined ? [] : [value(outcome)]));
  return `${shown(Math.min(...values))} to ${shown(Math.max(...values))}`;
}

/** What the plan gives, and how that spreads over the draws. */
function giveLines(plan: Plan, display: Display): readonly string[] {
  const { outcome, drawn, members, seed } = plan;
  const row = (name: string, unit: string, of: (outcome: AdviceOutcome) => number): readonly string[] => {
    const value = (told: AdviceOutcome): number => display.value(of(told), unit);
    return [name, display.unit(unit), shown(value(outcome)), bandOf(plan, value)];
  };
  const rows = [
    row('crops, fresh', 'kg', ({ crops }) => crops),
    row('fish gained', 'kg', ({ fish }) => fish),
    row('feed', 'kg', ({ feed }) => feed),
    row('water taken in', 'm3', ({ water }) => water),
  ];
  const kept = drawn.filter(({ holds }) => holds).length;
  return [
    ...columns([['gives', '', 'here', `in ${members} draws`], ...rows], ['left', 'left', 'right', 'left']),
    ...wrap(
      `in ${kept} of ${members} draws of the uncertain numbers (seed ${seed}) every condition holds` +
        (kept < members ? ': keep to less where you cannot watch it' : ''),
      width,
      '  ',
    ),
  ];
}

/** A week as it stands at the head of a row: `3  15 Oct`. */
const weekCells = ({ week, from }: PlanWeek, startDate: string): readonly string[] => [
  String(week),
  dateNames(startDate)(from),
];

/** Crops beside each other in one table; more of them stand in a second. */
const beside = 5;

/** A table of weeks and crops, those weeks alone in which there is something. */
function cropTable(
  { weeks, startDate }: Plan,
  title: string,
  cell: (week: PlanWeek, planting: string) => string,
): readonly string[] {
  const all = [
    ...new Set(weeks.flatMap(({ setOut, gives }) => [...setOut, ...gives].map(({ planting }) => planting))),
  ];
  const tables = Array.from({ length: Math.ceil(all.length / beside) }, (_, i) =>
    all.slice(i * beside, (i + 1) * beside),
  );
  return tables.flatMap((crops) => {
    const rows = weeks
      .map((week) => [...weekCells(week, startDate), ...crops.map((crop) => cell(week, crop))])
      .filter((row) => row.slice(2).some((text) => text !== ''));
    if (rows.length === 0) return [];
    return [
      title,
      ...columns(
        [['week', 'from', ...crops], ...rows],
        ['right', 'left', ...crops.map(() => 'right' as const)],
      ),
      '',
    ];
  });
}

/** Rows that say the same week after week, told once: `weeks 1 to 8`. */
function spans(
  { weeks, startDate }: Plan,
  title: string,
  text: (week: PlanWeek) => string,
): readonly string[] {
  const told: { from: PlanWeek; to: PlanWeek; text: string }[] = [];
  for (const week of weeks) {
    const last = told[told.length - 1] as (typeof told)[number] | undefined;
    if (last?.text === text(week)) last.to = week;
    else told.push({ from: week, to: week, text: text(week) });
  }
  const some = told.filter((each) => each.text !== '');
  if (some.length === 0) return [];
  const rows = some.map(({ from, to, text: what }) => {
    const [number, date] = weekCells(from, startDate);
    return [from === to ? `week ${number}` : `weeks ${number} to ${to.week}`, date, what];
  });
  return [title, ...columns(rows, ['left', 'left', 'left']).flatMap((line) => wrap(line, width, '    ')), ''];
}

function calendarLines(plan: Plan, display: Display): readonly string[] {
  const kilograms = (grams: number): string => shown(display.value(grams / 1000, 'kg'));
  const [kg, m2] = [display.unit('kg'), display.unit('m2')];
  const area = (squareMetres: number): string => display.amount(squareMetres, 'm2');
  const { start, dosers, fish } = plan;
  const stock = fish.filter(({ number }) => number > 0);
  const kept = stock.map(({ cohort, number, mass }) => `${cohort} ${number} of ${display.amount(mass, 'g')}`);
  const plants = (bed: { readonly plants?: number; readonly area: number }): string =>
    bed.plants === undefined ? area(bed.area) : String(bed.plants);
  const there = start.map((each) => `${each.planting} ${area(each.area)} (${plants(each)} plants)`);
  return [
    ...(kept.length === 0 ? [] : [...wrap(`fish at the start: ${kept.join(', ')}`, width, '  '), '']),
    ...(there.length === 0
      ? []
      : [...wrap(`on the beds at the start: ${there.join(', ')}`, width, '  '), '']),
    ...cropTable(plan, `seedlings to set out (plants, or ${m2})`, ({ setOut }, crop) => {
      const found = setOut.find(({ planting }) => planting === crop);
      return found === undefined ? '' : plants(found);
    }),
    ...cropTable(plan, `beds give, ${kg}`, ({ gives }, crop) => {
      const found = gives.find(({ planting }) => planting === crop);
      return found === undefined ? '' : kilograms(found.mass);
    }),
    ...spans(plan, `feed, ${display.unit('g')} a day in the mean of the week`, ({ feed }) =>
      feed.map(({ cohort, perDay }) => `${cohort} ${shown(display.value(perDay, 'g'))}`).join(', '),
    ),
    ...spans(plan, 'fish in and out', ({ fishIn, fishOut }) =>
      [
        ...fishIn.map(({ cohort, number }) => `${shown(number)} ${cohort} in`),
        ...fishOut.map(
          ({ cohort, number, mass }) => `${shown(number)} ${cohort} out (${kilograms(mass)} ${kg})`,
        ),
      ].join(', '),
    ),
    ...spans(plan, 'doses', ({ doses }) =>
      doses
        .map(({ product, vessel, mass }) => `${display.amount(mass, 'g')} ${plain(product)} into ${vessel}`)
        .join(', '),
    ),
    ...(dosers.length === 0
      ? []
      : [
          `dosers besides, a week: ${listed(dosers.map(({ product, mass }) => `${display.amount(mass, 'g')} ${plain(product)}`))}`,
          '',
        ]),
  ];
}

/** A plan for reading, 80 columns wide. */
export function planText(plan: Plan, display: Display, style: Style): string {
  const { title, keep, ration, tried, held } = plan;
  const asked = ['nothing harms fish, water or crops', 'the reservoir is never low', ...keep];
  return linesText([
    ...wrap(title, width).map((line) => style.strong(line)),
    ...wrap(
      `conditions: ${asked.join('; ')}${ration === undefined ? '' : `; water within ${ration}`}`,
      width,
      '  ',
    ),
    '',
    ...answerLines(plan, display, style),
    '',
    ...giveLines(plan, display),
    '',
    ...calendarLines(plan, display),
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
