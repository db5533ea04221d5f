// A lesson of your own: what is asked, what may be changed, and what is shown. Bundle it for a page: see the guide "A lesson of your own".
import { newMaker } from '@leat/view/pictures';
import {
  englishFrame,
  type Lesson,
  lessonElement,
  type LessonWords,
  numberOf,
  runText,
} from '@leat/view/lesson';

/** Every word of the lesson, apart from its code: a translation is a second object of this shape. */
const words = {
  title: 'Does a larger tank keep its water cleaner?',
  question: 'You double the tank and keep the fish. Is there half as much nitrate?',
  intro:
    '<p>An invented tank of 1000 L holds 20 tilapia that are fed 40 g a day. Nothing grows, nothing is let out.</p>',
  ask: 'How much nitrate is in the tank after 60 days?',
  guess: { label: 'My guess', unit: 'mg N/L' },
  sliders: { volume: { label: 'Tank', unit: 'm³' } },
  wrong: ['A larger tank is later with everything: with trouble, and with help.'],
  caution: 'Stocking is a matter of law and licensed practice.',
  exercise: 'At which volume is there half as much nitrate as in 1 m³?',
  readings: ['tank, m³', 'nitrate on day 60, mg N/L'],
} satisfies LessonWords;

const tankOf = (volume: number): string => `title: tank
days: 60
climate: { water-temperature: 26 degC, et0: 0 mm/d }
waters: { mains: { nitrate: 2 mg N/L, alkalinity: 150 mg/L as CaCO3, pH: 7.7, chloride: 30 mg/L } }
vessels: { tank: { kind: fish-tank, volume: ${volume} m3, area: 1.2 m2, aeration: 5 1/h } }
reservoir: tank
top-up: { level: ${volume} m3, rate: 5 L/min, from: [{ water: mains }] }
fish: { tilapia: { in: tank, species: nile-tilapia, number: 20, mass: 100 g, feed: grower-32, ration: 40 g/d } }
start: { biofilm: cycled, water: { like: mains, ammonia: 0.2 mg N/L, pH: 7.5 } }
`;

const lesson: Lesson<typeof words> = {
  id: 'larger-tank',
  open(kit, said) {
    const first = runText(tankOf(1));
    const nitrate = numberOf(first, 'last', 'nitrate@tank');
    return {
      system: first,
      ask: {
        kind: 'number',
        name: 'guess',
        from: 0,
        to: 100,
        step: 1,
        value: 40,
        right: nitrate,
        decimals: 0,
        near: 5,
      },
      shown: () => [
        kit.chart({
          title: 'Nitrate',
          unit: 'mg N/L',
          lines: [kit.course(first, 'nitrate@tank', 'nitrate', 'water')],
        }),
        kit.verdict(first),
      ],
      sliders: [{ name: 'volume', from: 0.5, to: 4, step: 0.5, value: 2 }],
      changed({ volume }) {
        const run = runText(tankOf(volume));
        return [
          ...kit.text('<p>Nitrate ends at {end} mg N/L.</p>', {
            end: [numberOf(run, 'last', 'nitrate@tank'), 1],
          }),
          kit.verdict(run),
          kit.file('tank', tankOf(volume)),
        ];
      },
      answer: () =>
        kit.text(`<p>In ${said.sliders.volume.unit}: try 2, and say why it is not just half.</p>`),
      sources: () => [kit.sources(first, ['aob.', 'fish.nile-tilapia.'])],
    };
  },
};

/** Puts the lesson into an element of a page. */
export function openLarger(main: Element): void {
  const stage = {
    maker: newMaker(main.ownerDocument),
    frame: englishFrame,
    width: () => main.clientWidth || 680,
  };
  main.replaceChildren(lessonElement(lesson, words, stage));
}
