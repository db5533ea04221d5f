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
    /^pH +tank-1 .* 8\.05 /m,
  ],
  'all-at-once': [
    'What if every crop is planted and cut on the same day, not in staggered batches?',
    /^Fish: safe\.$/m,
    /^Crops: 205 kg lettuce butterhead, /m,
    /^nitrate +tank-1 .* 48\.5 +d 45 /m,
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
    /^Filter: falls behind from day 45 .*, short of alkalinity; most of all in ammonia; keeps up again from day 67/m,
    /^Fish: safe, but not at ease from day 39\.9 .*: pH below 6 in tank-2 and tank-1 for 52\.2 d, at worst 4\.41/m,
    /^TAN +tank-1 .* 3\.01 +d 60 /m,
    /^pH +tank-1 .* 7\.45 +4\.44 +d 75 /m,
    /^alkalinity +tank-1 .* -0\.0392 +d 75 /m,
  ],
  'bare-beds-dosed': [
    'What follows when half the beds stay unplanted for ten weeks and the weekly dose goes on?',
    /^Fish: safe\.$/m,
    /^pH +tank-1 .* 7\.09 +d 35 /m,
    /^alkalinity +tank-1 .* 0\.226 +d 35 /m,
  ],
  'chlorinated-refill': [
    'What if a tenth of the water is changed for chlorinated mains, not freed of chlorine first?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.378, nitrite 0\.108 mg N\/L\)\.$/m,
  ],
  'cold-month': [
    'What does a month of cold water do?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.663, nitrite 0\.234 mg N\/L\)\.$/m,
    /^free ammonia +tank-1 .* 0\.045 +d 124 /m,
  ],
  'double-stock': [
    'What follows when stock and feed are doubled in one day, on a filter grown to the old load?',
    /^Fish: safe, but not at ease from day 4\.1 .*: stocking above 20 kg\/m3/m,
    /^Filter: keeps up \(ammonia at most 0\.868, nitrite 0\.231 mg N\/L\)\.$/m,
  ],
  'double-stock-steps': [
    'How much milder is it to double stock and feed in four steps, two weeks apart?',
    /^Fish: safe, but not at ease from day 29\.2 /m,
    /^Filter: keeps up \(ammonia at most 0\.662, nitrite 0\.143 mg N\/L\)\.$/m,
  ],
  'dry-spell': [
    'What happens when mains water is rationed to a third for eight weeks?',
    /^Water: short, 118 L a day; reservoir low from day 33 .*, down to 23 %/m,
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
    /nitrogen gas +3668 g +53\.1 %/m,
  ],
  limestone: [
    'Can crushed shell do what potassium bicarbonate does?',
    /^Fish: safe\.$/m,
    /^pH +tank-1 .* 8\.11 /m,
    /^alkalinity +tank-1 .* 0\.755 +d 18 /m,
  ],
  'power-cut': [
    'What does a power cut of six hours do?',
    /^Fish: half or more dead by day 30\.2 .*: oxygen below 0\.5 mg\/L in tank-2 and tank-1/m,
    /Dead: 83 % of juveniles and 80 % of growers, of want of oxygen\./m,
    /oxygen below 3 mg\/L .harms them. after 2\.3 h, oxygen below 0\.5 mg\/L .deadly. after 4\.2 h/m,
  ],
  'scrubbed-filter': [
    'What follows when a keen helper washes the filter and the media beds too hard?',
    /^Fish: safe\.$/m,
    /^Filter: keeps up \(ammonia at most 0\.714, nitrite 0\.244 mg N\/L\)\.$/m,
  ],
  'start-up': [
    'How do the first three months go when a new filter is started with fish?',
    /^Fish: at risk from day 1\.1 .*: free ammonia above 0\.05 mg N\/L in tank-2 and tank-1 for 17\.8 d/m,
    /also nitrite above 1 mg N\/L/m,
    /^Filter: falls behind from day 2 .*, its bacteria were not grown in/m,
    /keeps up again from day 28 /m,
  ],
  'well-water': [
    'What if the mains carry nitrate?',
    /^Fish: safe\.$/m,
    /^nitrate +tank-1 .* 27\.4 /m,
    /^alkalinity +tank-1 .* 3\.61 /m,
    /^ {2}source water +271 g +3\.9 %/m,
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
