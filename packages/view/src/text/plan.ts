import type { AdviceOutcome, PlanWeek } from '@leat/core';
import type { Plan } from '@leat/core/tasks';
import { type Display, plainDisplay } from '../display/display.js';
import { listed, plain } from './names.js';
import { valueText } from './numbers.js';
import { dateNames } from './verdict.js';

/** Rows of texts under a title. */
export interface ToldTable {
  readonly title: string;
  /** Empty: the rows speak for themselves. */
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly sides: readonly ('left' | 'right')[];
}

/** A quantity of a plan: its name, how much of it, and between which ends it was looked for. */
export interface ToldQuantity {
  readonly name: string;
  readonly amount: string;
  readonly between: string;
}

/** A plan in words, part by part; the verdict of its run is told as that of any. */
export interface PlanTold {
  readonly answer: string;
  readonly quantities: readonly ToldQuantity[];
  /** What it gives, here and over the draws. */
  readonly gives: ToldTable;
  /** In how many of the draws every condition holds. */
  readonly kept: string;
  /** What is there at the start, a line each. */
  readonly start: readonly string[];
  /** What to set out, what beds give, feed, fish in and out, doses: those of them that there are. */
  readonly calendar: readonly ToldTable[];
  /** What dosers give besides; absent: there are none. */
  readonly dosers?: string;
}

function toldQuantity(quantity: Plan['quantities'][number], { words }: Display): ToldQuantity {
  const { plan } = words;
  const { name, unit, value, from, to } = quantity;
  const amount = (of: number): string => valueText({ unit }, Number(of.toPrecision(4)));
  const end = value === to ? plan.moreMayDo : value === from ? plan.lessMayDo : undefined;
  return {
    name: plan.quantities[name] ?? name,
    amount: amount(value),
    between: `${plan.lookedAt(amount(from), amount(to))}${end === undefined ? '' : `: ${end}`}`,
  };
}

/** What the plan gives, and how that spreads over the draws. */
function givesTable({ outcome, drawn, members }: Plan, display: Display): ToldTable {
  const { plan } = display.words;
  const row = (name: string, unit: string, of: (outcome: AdviceOutcome) => number): readonly string[] => {
    const value = (told: AdviceOutcome): number => display.value(of(told), unit);
    const values = drawn.flatMap((each) => (each.outcome === undefined ? [] : [value(each.outcome)]));
    const [low, high] = [Math.min(...values), Math.max(...values)].map(display.number);
    return [name, display.unit(unit), display.number(value(outcome)), plan.spread(low, high)];
  };
  return {
    title: '',
    head: [plan.gives, '', plan.here, plan.inDraws(members)],
    rows: [
      row(plan.cropsFresh, 'kg', ({ crops }) => crops),
      row(plan.fishGained, 'kg', ({ fish }) => fish),
      row(plan.feed, 'kg', ({ feed }) => feed),
      row(plan.waterIn, 'm3', ({ water }) => water),
    ],
    sides: ['left', 'left', 'right', 'left'],
  };
}

/** Crops beside each other in one table; more of them stand in a second. */
const beside = 5;

/** Tables of weeks and crops, those weeks alone in which there is something. */
function cropTables(
  { weeks, startDate }: Plan,
  title: string,
  cell: (week: PlanWeek, planting: string) => string,
  display: Display,
): readonly ToldTable[] {
  const { plan } = display.words;
  const date = dateNames(startDate, display);
  const all = [
    ...new Set(weeks.flatMap(({ setOut, gives }) => [...setOut, ...gives].map(({ planting }) => planting))),
  ];
  const groups = Array.from({ length: Math.ceil(all.length / beside) }, (_, i) =>
    all.slice(i * beside, (i + 1) * beside),
  );
  return groups.flatMap((crops) => {
    const rows = weeks
      .map((week) => [String(week.week), date(week.from), ...crops.map((crop) => cell(week, crop))])
      .filter((row) => row.slice(2).some((text) => text !== ''));
    if (rows.length === 0) return [];
    const sides = ['right', 'left', ...crops.map(() => 'right' as const)] as const;
    return [{ title, head: [plan.week, plan.from, ...crops], rows, sides }];
  });
}

/** Rows that say the same week after week, told once: `weeks 1 to 8`; no table where nothing is said. */
function spansTable(
  { weeks, startDate }: Plan,
  title: string,
  text: (week: PlanWeek) => string,
  display: Display,
): readonly ToldTable[] {
  const date = dateNames(startDate, display);
  const told: { from: PlanWeek; to: PlanWeek; text: string }[] = [];
  for (const week of weeks) {
    const last = told[told.length - 1] as (typeof told)[number] | undefined;
    if (last?.text === text(week)) last.to = week;
    else told.push({ from: week, to: week, text: text(week) });
  }
  const rows = told
    .filter((each) => each.text !== '')
    .map(({ from, to, text: what }) => [display.words.plan.weeks(from.week, to.week), date(from.from), what]);
  return rows.length === 0 ? [] : [{ title, head: [], rows, sides: ['left', 'left', 'left'] }];
}

/** What to do week by week, and what comes of it. */
function calendarOf(plan: Plan, display: Display): readonly ToldTable[] {
  const words = display.words.plan;
  const kilograms = (grams: number): string => display.number(display.value(grams / 1000, 'kg'));
  const cells = (title: string, cell: (week: PlanWeek, planting: string) => string): readonly ToldTable[] =>
    cropTables(plan, title, cell, display);
  const spans = (title: string, text: (week: PlanWeek) => string): readonly ToldTable[] =>
    spansTable(plan, title, text, display);
  return [
    ...cells(words.setOut(display.unit('m2')), ({ setOut }, crop) => {
      const found = setOut.find(({ planting }) => planting === crop);
      return found === undefined ? '' : plantsOn(found, display);
    }),
    ...cells(words.bedsGive(display.unit('kg')), ({ gives }, crop) => {
      const found = gives.find(({ planting }) => planting === crop);
      return found === undefined ? '' : kilograms(found.mass);
    }),
    ...spans(words.feedWeekly(display.unit('g')), ({ feed }) =>
      feed.map(({ cohort, perDay }) => `${cohort} ${display.number(display.value(perDay, 'g'))}`).join(', '),
    ),
    ...spans(words.fishInAndOut, ({ fishIn, fishOut }) =>
      [
        ...fishIn.map(({ cohort, number }) => words.fishIn(display.number(number), cohort)),
        ...fishOut.map(({ cohort, number, mass }) =>
          words.fishOut(display.number(number), cohort, `${kilograms(mass)} ${display.unit('kg')}`),
        ),
      ].join(', '),
    ),
    ...spans(words.doses, ({ doses }) =>
      doses
        .map(({ product, vessel, mass }) =>
          words.dose(display.amount(mass, 'g'), plain(product, display), vessel),
        )
        .join(', '),
    ),
  ];
}

/** How many plants stand on an area, or the area where the tables do not say. */
const plantsOn = (bed: { readonly plants?: number; readonly area: number }, display: Display): string =>
  bed.plants === undefined ? display.amount(bed.area, 'm2') : String(bed.plants);

/** A plan in words: how much of what, what it gives, and what to sow, feed, dose, put in and take out week by week. */
export function planTold(plan: Plan, display: Display = plainDisplay): PlanTold {
  const words = display.words.plan;
  const { quantities, aim, amount, holds, drawn, members, seed, fish, start, dosers } = plan;
  const stock = fish
    .filter(({ number }) => number > 0)
    .map(({ cohort, number, mass }) => words.ofMass(cohort, String(number), display.amount(mass, 'g')));
  const beds = start.map((each) =>
    words.bed(each.planting, display.amount(each.area, 'm2'), plantsOn(each, display)),
  );
  const dosed = dosers.map(({ product, mass }) => `${display.amount(mass, 'g')} ${plain(product, display)}`);
  return {
    answer: holds ? words.forAim(aim.text, display.amount(amount, aim.unit)) : words.none,
    quantities: quantities.map((each) => toldQuantity(each, display)),
    gives: givesTable(plan, display),
    kept: words.kept(drawn.filter((each) => each.holds).length, members, seed),
    start: [
      ...(stock.length === 0 ? [] : [words.fishAtStart(stock.join(', '))]),
      ...(beds.length === 0 ? [] : [words.bedsAtStart(beds.join(', '))]),
    ],
    calendar: calendarOf(plan, display),
    ...(dosed.length > 0 && { dosers: words.dosers(listed(dosed, display)) }),
  };
}
