import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { leat } from '../../support/leat.js';

const folder = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));

/** The question that each shipped scenario asks in its first line, and how the run of it answers, in the order of its text. */
const answers: Readonly<Record<string, readonly [question: string, ...answer: readonly RegExp[]]>> = {
  'air-and-acid': [
    'How do the stones that air is blown through, and the air of the house, change pH?',
    /^Fish: safe\.$/m,
    /^pH +tank-1 .* 7\.48 /m,
  ],
  'all-at-once': [
    'What if every crop is planted and cut on the same day, not in staggered batches?',
    /^Fish: safe\.$/m,
    /^Crops: 210 kg lettuce butterhead, /m,
    /^nitrate +tank-1 .* 57\.3 +d 154 /m,
  ],
  backyard: [
    "What does a small backyard system do, and what does its keeper's log say of it?",
    /^Fish: safe\.$/m,
    /^Filter: keeps up /m,
    /^Water: enough, 13\.\d L a day\.$/m,
    /^Crops: 13\.\d kg basil harvested\.$/m,
  ],
  'bare-beds': [
    'What follows when half the beds stay unplanted for ten weeks and nobody doses?',
    /^No forecast from day 84\.5 .*: pH below 4 in media-bed-2, media-bed-1 and sump, /m,
    /^Filter: falls behind from day 36 .*, short of alkalinity; most of all in ammonia, to the end/m,
    /^Fish: safe, but not at ease from day 39\.7 .*: pH below 6 in tank-2 and tank-1 for 72\.3 d, at worst 4\.03/m,
    /^TAN +tank-1 .* 8\.63 +d 98 /m,
    /^pH +tank-1 .* 4\.02 +d 112 /m,
    /^alkalinity +tank-1 .* -0\.104 +d 112 /m,
  ],
  'bare-beds-dosed': [
    'What follows when half the beds stay unplanted for ten weeks and the weekly dose goes on?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.515, nitrite 0\.2 mg N\/L\)\.$/m,
    /^pH +tank-1 .* 7\.6 +6\.54 +d 63 /m,
    /^alkalinity +tank-1 .* 0\.0533 +d 63 /m,
  ],
  'chlorinated-refill': [
    'What if a tenth of the water is changed for chlorinated mains, not freed of chlorine first?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.288, nitrite 0\.09 mg N\/L\)\.$/m,
  ],
  'cold-month': [
    'What does a month of cold water do?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.549, nitrite 0\.203 mg N\/L\)\.$/m,
    /^Feed: not eaten, 20 % of that of growers and 18 % of that of juveniles\.$/m,
    /^free ammonia +tank-1 .* 0\.0319 +d 124 /m,
    /^nitrate +tank-1 .* 4\.82 +d 140 /m,
  ],
  'double-stock': [
    'What follows when stock and feed are doubled in one day, on a filter grown to the old load?',
    /^Fish: safe, but not at ease from day 5\.7 .*: stocking above 20 kg\/m3/m,
    /^Filter: keeps up \(ammonia at most 0\.626, nitrite 0\.171 mg N\/L\)\.$/m,
  ],
  'double-stock-steps': [
    'How much milder is it to double stock and feed in four steps, two weeks apart?',
    /^Fish: safe, but not at ease from day 29\.9 /m,
    /^Filter: keeps up \(ammonia at most 0\.486, nitrite 0\.123 mg N\/L\)\.$/m,
  ],
  'dry-spell': [
    'What happens when mains water is rationed to a third for eight weeks?',
    /^Water: short, 118 L a day; reservoir low from day 33 .*, down to 25 %/m,
    /^Fish: safe\.$/m,
    /^chloride +tank-1 .* 91\.5 /m,
  ],
  fishless: [
    'Can a new filter be grown with ammonia from a bag before any fish come?',
    /^Filter: falls behind from day 2 .*, its bacteria were not grown in; .*$/m,
    /keeps up again from day 29 /m,
  ],
  glasshouse: [
    'What does nitrogen do in a well-run glasshouse in half a year?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up /m,
    /nitrogen went to/m,
    /nitrogen gas +2065 g +39\.6 %/m,
    /^nitrate +tank-1 .* 56\.2 +30 +.* 56\.8 +d 152 /m,
    /^pH +tank-1 .* 7\.78 +7\.2 /m,
  ],
  limestone: [
    'Can crushed shell do what potassium bicarbonate does?',
    /^Fish: safe\.$/m,
    /^pH +tank-1 .* 7\.87 /m,
    /^alkalinity +tank-1 .* 0\.794 +d 21 /m,
  ],
  'power-cut': [
    'What does a power cut of six hours do?',
    /^Fish: half or more dead by day 30\.2 .*: oxygen below 0\.5 mg\/L in tank-2 and tank-1/m,
    /Dead: 82 % of juveniles and 66 % of growers, of want of oxygen\./m,
    /oxygen below 3 mg\/L .harms them. after 2\.4 h, oxygen below 0\.5 mg\/L .deadly. after 4\.1 h/m,
  ],
  'scrubbed-filter': [
    'What follows when a keen helper washes the filter and the media beds too hard?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.537, nitrite 0\.196 mg N\/L\)\.$/m,
  ],
  'start-up': [
    'How do the first three months go when a new filter is started with fish?',
    /^Fish: at risk from day 1\.1 .*: free ammonia above 0\.05 mg N\/L in tank-2 and tank-1 for 17\.9 d/m,
    /also nitrite above 1 mg N\/L/m,
    /^Filter: falls behind from day 2 .*, its bacteria were not grown in/m,
    /keeps up again from day 28 /m,
  ],
  'well-water': [
    'What if the mains carry nitrate?',
    /^Fish: safe\.$/m,
    /^nitrate +tank-1 .* 71\.4 /m,
    /^alkalinity +tank-1 .* 1\.26 /m,
    /^ {2}source water +268 g +4\.9 %/m,
  ],
};

const lines = (name: string): readonly string[] => readFileSync(`${folder}${name}.yaml`, 'utf8').split('\n');

/** A text on whose long lines a fact is looked for, whether it was broken there or not. */
const whole = (text: string): string =>
  text.replace(/\n {2,4}(?=\S)/g, (gap) => (gap.length > 4 ? gap : ' '));

describe('shipped what-ifs', () => {
  it('are all held to a question and an answer, in lines of at most 120 letters', () => {
    const shipped = readdirSync(folder)
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => file.replace(/\.yaml$/, ''));
    expect(Object.keys(answers).sort()).toEqual(shipped.sort());
    for (const name of shipped)
      for (const line of lines(name).filter((each) => each.startsWith('#')))
        expect(Array.from(line).length, `${name}: ${line}`).toBeLessThanOrEqual(120);
  });

  it.each(Object.entries(answers))(
    '%s: its question stands first and its run answers it',
    async (name, held) => {
      const [question, ...answer] = held;
      expect(lines(name)[0]).toBe(`# ${question}`);
      const { code, out } = await leat(['run', `${name}.yaml`], folder);
      expect(code).toBe(0);
      let from = 0;
      for (const fact of answer) {
        const rest = `${out}\n${whole(out)}`;
        expect(rest, `${name}: ${fact.source}`).toMatch(fact);
        from += 1;
      }
      expect(from).toBe(answer.length);
    },
  );
});
