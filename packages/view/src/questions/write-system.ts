import type { Answers } from './answers.js';
import { climateOf } from './climate.js';
import { DEPTH, type Design, designOf, FED_SHARE, monthsOfRun, RUN_DAYS, SETTLER_MINUTES } from './design.js';
import { en } from './words/en.js';
import type { QuestionWords } from './words/index.js';

/** How a file is written. */
export interface WriteOptions {
  /** Words of the remarks; English where there are none. Keys and names stay those of the file. */
  readonly words?: QuestionWords;
  /** Where an editor finds the schema of the file, as the file sees it; absent: no line of it. */
  readonly schema?: string;
}

/** A worked-out number as a file writes it: to three digits, which a guess never has. */
const rounded = (value: number): string => String(Number(value.toPrecision(3)));
const given = (value: number): string => String(value);
const litres = (cubicMetres: number): string => `${rounded(cubicMetres * 1000)} L`;
const percent = (share: number): string => `${Number((share * 100).toPrecision(6))} %`;

/** Remarks behind a line: what was answered, and what is a guess and by which rule. */
function remarks(words: QuestionWords): {
  readonly answered: (more?: string) => string;
  readonly assumed: (why: string, source?: string) => string;
} {
  const { file } = words;
  return {
    answered: (more) => `# ${file.answered}${more === undefined ? '' : `; ${more}`}`,
    assumed: (why, source = file.practice) => `# ${file.assumed}: ${why} (${source})`,
  };
}

interface Writing {
  readonly answers: Answers;
  readonly design: Design;
  readonly words: QuestionWords;
}

const monthly = (unit: string, values: readonly number[]): string =>
  `{ unit: ${unit}, monthly: [${values.join(', ')}] }`;

function headLines({ answers, words }: Writing): readonly string[] {
  const { file } = words;
  const { assumed } = remarks(words);
  const month = String(answers.month).padStart(2, '0');
  return [
    ...file.head.map((line) => `# ${line}`),
    `title: ${file.title}`,
    `note: ${file.note}`,
    '',
    `days: ${RUN_DAYS} ${assumed(file.days, file.guess)}`,
    `every: 1 d # ${file.every}`,
    `start-date: 2026-${month}-01 # ${file.startDate}`,
    '',
  ];
}

function climateLines({ answers, words }: Writing): readonly string[] {
  const { file } = words;
  const { assumed } = remarks(words);
  const { water, et0 } = climateOf(answers);
  const own = answers.climate === 'own';
  return [
    `# ${words.groups.climate}`,
    'climate:',
    `  # ${own ? file.ownMonths : file.invented}`,
    `  water-temperature: ${monthly('degC', water)}`,
    `  et0: ${monthly('mm/d', et0)}`,
    `  # ${words.questions.cover.ask} ${words.options.cover[answers.cover]} (${file.answered})`,
    ...(answers.cover === 'greenhouse' ? [`  greenhouse-factor: 70 % ${assumed(file.greenhouse)}`] : []),
    `  # ${file.light}`,
    '',
  ];
}

function waterLines({ answers, words }: Writing): readonly string[] {
  const { file } = words;
  const { answered } = remarks(words);
  return [
    `# ${words.groups.water}: ${file.waters}`,
    'waters:',
    `  source: { like: ${answers.water} } ${answered()}`,
    ...(answers.roof > 0 ? [`  rain: { like: rain } # ${file.rainWater}`] : []),
    '',
  ];
}

function tankLines({ answers, design, words }: Writing): readonly string[] {
  const { file } = words;
  const { answered, assumed } = remarks(words);
  const area = design.tankVolume / DEPTH.tank;
  const air =
    design.mostFeed > 0 ? file.tankAir(rounded(design.mostFeed), given(RUN_DAYS)) : file.tankAirLeast;
  return [
    `  ${design.tanks[0].name}: &tank`,
    '    kind: fish-tank',
    `    volume: ${given(answers['tank-volume'])} L ${answered()}`,
    `    area: ${rounded(area)} m2 ${assumed(file.tankArea)}`,
    `    aeration: ${rounded(design.tankAir)} 1/h ${assumed(air)}`,
    ...design.tanks.slice(1).map(({ name }) => `  ${name}: *tank`),
  ];
}

function filterLines({ answers, design, words }: Writing): readonly string[] {
  const { file } = words;
  const { answered, assumed } = remarks(words);
  const { settler, filter } = design;
  return [
    ...(settler === undefined
      ? []
      : [
          '  settler:',
          '    kind: settler',
          `    volume: ${litres(settler)} ${assumed(file.settler(given(SETTLER_MINUTES)))}`,
          `    area: ${rounded(settler / DEPTH.settler)} m2`,
          `    capture: 60 % ${assumed(file.capture)}`,
        ]),
    ...(filter === undefined
      ? []
      : [
          '  filter:',
          '    kind: biofilter',
          `    volume: ${litres(filter.volume)} ${assumed(file.filterVolume)}`,
          `    area: ${rounded(filter.volume / DEPTH.filter)} m2`,
          `    media: { type: ${answers.medium}, volume: ${given(answers['medium-volume'])} L } ${answered()}`,
          `    aeration: ${rounded(filter.air)} 1/h ${assumed(design.mostFeed > 0 ? file.filterAir : file.filterAirLeast)}`,
        ]),
  ];
}

function bedLines({ answers, design, words }: Writing): readonly string[] {
  const { file } = words;
  const { answered, assumed } = remarks(words);
  const depths = { 'raft-bed': DEPTH.raft, 'media-bed': DEPTH.media, channel: DEPTH.channel } as const;
  return design.beds.flatMap(({ name, kind, area, volume }) => {
    const deep = rounded(depths[kind] * 100);
    const isMedia = kind === 'media-bed';
    return [
      `  ${name}:`,
      `    kind: ${kind}`,
      `    volume: ${litres(volume)} ${assumed(isMedia ? file.bedWater(deep) : file.bedDepth(deep))}`,
      `    area: ${given(area)} m2 ${answered()}`,
      ...(isMedia
        ? [
            `    media: { type: ${answers['bed-medium']}, volume: ${litres(area * DEPTH.media)} } ${assumed(file.bedMedium)}`,
          ]
        : []),
      `    aeration: ${rounded(design.bedAir)} 1/h ${assumed(file.bedAir)}`,
    ];
  });
}

function vesselLines(writing: Writing): readonly string[] {
  const { answers, design, words } = writing;
  const { file } = words;
  const { assumed } = remarks(words);
  const bare = answers.filter === 'beds' && answers['media-bed-area'] === 0;
  return [
    ...(bare ? [`# ${file.beds}`] : []),
    'vessels:',
    ...tankLines(writing),
    ...filterLines(writing),
    ...bedLines(writing),
    '  sump:',
    '    kind: sump',
    `    volume: ${litres(design.sump)} ${assumed(file.sump)}`,
    `    area: ${rounded(design.sump / DEPTH.sump)} m2`,
    '',
    `reservoir: sump # ${file.reservoir}`,
    '',
    'pumps:',
    `  main: { inlet: ${litres(design.sump * 0.2)}, restart: ${litres(design.sump * 0.3)} } ${assumed(file.inlet)}`,
    '',
  ];
}

/** Where water goes after the tanks, stage by stage. */
function stagesOf({ answers, design }: Writing): readonly (readonly string[])[] {
  const settler = design.settler === undefined ? [] : [['settler']];
  const filter = design.filter === undefined ? [] : [['filter']];
  const beds = design.beds.length === 0 ? [] : [design.beds.map(({ name }) => name)];
  return answers.place === 'before' ? [...settler, ...beds, ...filter] : [...settler, ...filter, ...beds];
}

/** Shares of the beds in percent, which sum to 100. */
function sharesOf({ beds }: Design): ReadonlyMap<string, string> {
  const shares = beds.map(({ share }) => Number((share * 100).toFixed(4)));
  const others = shares.slice(0, -1).reduce((sum, each) => sum + each, 0);
  const all = [...shares.slice(0, -1), Number((100 - others).toFixed(4))];
  return new Map(beds.map(({ name }, index) => [name, `${all[index]} %`]));
}

function flowLines(writing: Writing): readonly string[] {
  const { design, words } = writing;
  const { file } = words;
  const { assumed } = remarks(words);
  const tanks = design.tanks.map(({ name }) => name);
  const stages = [tanks, ...stagesOf(writing), ['sump']];
  const shares = sharesOf(design);
  const way = ['sump', ...stages.map((stage) => stage.join(' + '))].join(' > ');
  const byGravity = stages.slice(1).flatMap((stage, index) =>
    stages[index].flatMap((from) =>
      stage.map((to) => {
        const share = stage.length > 1 ? `, share: ${shares.get(to) ?? ''}` : '';
        const why = stage.length > 1 ? ` ${assumed(file.shares)}` : '';
        return `  - { from: ${from}, to: ${to}${share} }${why}`;
      }),
    ),
  );
  const rate = `${rounded(design.tankFlow)} m3/h`;
  return [
    `# ${file.loop(way)}`,
    'flows:',
    ...tanks.map(
      (to) =>
        `  - { from: sump, to: ${to}, pump: main, rate: ${rate} } ${assumed(file.flow(rounded(design.turnover)), 'FAO 589')}`,
    ),
    ...byGravity,
    '',
  ];
}

function topUpLines({ answers, design, words }: Writing): readonly string[] {
  const { file } = words;
  const { answered, assumed } = remarks(words);
  const cap = answers.rationed === 'yes' ? `, cap: ${given(answers['water-a-day'])} L/d` : '';
  const rain = monthly('mm/d', climateOf(answers).rain);
  return [
    'top-up:',
    `  level: ${litres(design.sump * 0.75)} ${assumed(file.level)}`,
    `  rate: 10 L/min ${assumed(file.topUpRate)}`,
    '  from:',
    ...(answers.roof > 0 ? ['    - rain-tank'] : []),
    `    - { water: source${cap} }${cap === '' ? '' : ` ${answered(file.cap)}`}`,
    '',
    ...(answers.roof > 0
      ? [
          'rain-tank:',
          `  capacity: ${given(answers['rain-tank'])} L ${answered()}`,
          `  volume: ${given(answers['rain-tank'] / 2)} L ${assumed(file.rainTank, file.guess)}`,
          `  roof: ${given(answers.roof)} m2 ${answered()}`,
          `  runoff: 85 % ${assumed(file.runoff)}`,
          `  # ${answers.climate === 'own' ? file.ownMonths : file.invented}`,
          `  rain: ${rain}`,
          '  water: rain',
          '',
        ]
      : []),
  ];
}

/** The ration of one tank. */
function rationLines({ answers, design, words }: Writing, fish: number): readonly string[] {
  const { answered, assumed } = remarks(words);
  if (answers.feeding === 'ration') {
    const ration = (answers.ration * fish) / answers.fish;
    return [`    ration: ${Number(ration.toPrecision(6))} g/d ${answered()}`];
  }
  return [
    `    ration: ${assumed(words.file.appetite(percent(FED_SHARE)))}`,
    ...design.rations.map(
      ({ mass, perDay }) =>
        `      - { mass: ${Number(mass.toPrecision(6))} g, ration: ${rounded(perDay * 100)} %/d }`,
    ),
  ];
}

function fishLines(writing: Writing): readonly string[] {
  const { answers, design, words } = writing;
  const { answered, assumed } = remarks(words);
  if (answers.fish === 0) return [`fish: {} ${answered(words.file.noFish)}`, ''];
  return [
    'fish:',
    ...design.tanks
      .filter(({ fish }) => fish > 0)
      .flatMap(({ name, fish }) => [
        `  fish-of-${name}:`,
        `    in: ${name}`,
        `    species: ${answers.species} ${answered()}`,
        `    number: ${given(fish)} ${answered()}`,
        `    mass: ${given(answers['fish-mass'])} g ${answered()}`,
        `    feed: ${design.feedName} ${assumed(words.file.feedName, words.file.guess)}`,
        `    protein: ${given(answers.protein)} % ${answered()}`,
        ...rationLines(writing, fish),
      ]),
    '',
  ];
}

function plantingLines({ design, words }: Writing): readonly string[] {
  const { answered, assumed } = remarks(words);
  if (design.plantings.length === 0) return [`plantings: {} ${answered(words.file.noCrops)}`, ''];
  return [
    'plantings:',
    ...design.plantings.map(({ name, bed, crop, area, batches }) => {
      const some = batches > 1 ? `, batches: ${batches}` : '';
      const why = batches > 1 ? assumed(words.file.batches) : answered();
      return `  ${name}: { in: ${bed}, crop: ${crop}, area: ${Number(area.toPrecision(6))} m2${some} } ${why}`;
    }),
    '',
  ];
}

function careLines({ answers, design, words }: Writing): readonly string[] {
  const { file } = words;
  const { assumed, answered } = remarks(words);
  const isNew = answers.start === 'new';
  return [
    ...(design.settler === undefined
      ? []
      : [
          'drain-solids:',
          `  - { vessel: settler, share: 90 %, water: ${litres(design.settler * 0.1)}, every: 7 d } ${assumed(file.drain)}`,
          '',
        ]),
    `# ${file.rule}`,
    'rules:',
    '  - when: { read: alkalinity, in: sump, below: 60 mg/L as CaCO3 }',
    `    do: { dose: { into: sump, product: potassium-bicarbonate, mass: ${rounded(design.dose)} g } } ${assumed(file.ruleMass)}`,
    '    wait: 1 d',
    '',
    'start:',
    `  biofilm: ${isNew ? 'uncycled' : 'cycled'} ${answered(isNew ? file.uncycled : file.cycled)}`,
    isNew
      ? '  water: { like: source }'
      : `  water: { like: source, ammonia: 0.2 mg N/L, nitrite: 0.1 mg N/L, nitrate: 20 mg N/L, pH: 7.4 } ${assumed(file.startWater, file.guess)}`,
  ];
}

function actionLines({ answers, design, words }: Writing): readonly string[] {
  if (design.warmth.length === 0) return [];
  const { file } = words;
  return [
    '',
    `# ${file.warmth} ${file.warmthLonger}`,
    'actions:',
    ...monthsOfRun(answers).flatMap((month, index) => {
      const at = new Date(Date.UTC(2026, answers.month - 1 + index, 1));
      const day = Math.round((at.getTime() - Date.UTC(2026, answers.month - 1, 1)) / 86_400_000);
      if (day >= RUN_DAYS) return [];
      const factor = Number(design.warmth[month].toPrecision(3));
      return [
        `  - { at: ${day} d, feed: { cohort: all, factor: ${factor} } } # ${at.toISOString().slice(0, 10)}`,
      ];
    }),
  ];
}

/**
 * The system file of some answers: YAML with remarks that say what each line means, what was answered and what was
 * assumed, and by which rule. Answers are taken to be sound (`answerFaults`).
 */
export function writeSystem(answers: Answers, options: WriteOptions = {}): string {
  const words = options.words ?? en;
  const writing: Writing = { answers, design: designOf(answers), words };
  const lines = [
    ...(options.schema === undefined ? [] : [`# yaml-language-server: $schema=${options.schema}`]),
    ...headLines(writing),
    ...climateLines(writing),
    ...waterLines(writing),
    ...vesselLines(writing),
    ...flowLines(writing),
    ...topUpLines(writing),
    ...fishLines(writing),
    ...plantingLines(writing),
    ...careLines(writing),
    ...actionLines(writing),
  ];
  return `${lines.join('\n')}\n`;
}
