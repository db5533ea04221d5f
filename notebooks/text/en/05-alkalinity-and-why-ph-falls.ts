export const words = {
  file: 'soft water',
  title: '05 · Alkalinity and why pH falls',
  question: 'The pH of a tank falls, though nobody changed anything. On which day could you have known?',
  intro: `<p>Turning ammonia into nitrate makes acid. Alkalinity takes the acid up, and while there is enough the pH hardly moves.
    The invented system stands on very soft mains water, is fed 100 g a day and has 1 m² of its bed planted. Nobody doses, and
    nobody takes out what settles.</p>`,
  ask: 'Which course will pH take over 90 days?',
  choices: [
    'A straight line down',
    'Down, faster and faster until alkalinity is spent, then slower; and weeks later up again',
    'Down, and it stays down until somebody doses',
    'It rises all the time, because the tank is aired',
    'It stays: water has a pH of its own',
  ],
  replies: [
    'Alkalinity falls in a straight line; pH answers slowly while much is left and fast when little is.',
    'pH answers slowly while much alkalinity is left and fast when little is; what settles gives base back.',
    'Sludge that breathes nitrate gives base back, undosed.',
    'Air drives carbon dioxide out and lifts the pH on the first day; the acid of nitrification goes on.',
    'pH is what acid and base leave over, and acid comes in every day with the feed.',
  ],
  shown: `<p>Alkalinity falls from the first day on. Half of its {start} meq/L is gone on <strong>day {half}</strong>: that was the
    warning. Ammonia passes {guide} mg N/L, the guide, on <strong>day {late}</strong>, {warned} days later. pH loses {slow} in the five days
    after the first and {fast} in the five days after the seventh, when little is left. Where alkalinity is spent the bacteria run
    short of inorganic carbon, of which it is nearly all, and acid holds them back: ammonia rises to {tan} mg N/L on day
    {tan-day}.</p>
    <p>The lowest picture tells who gives the base. What settles breathes nitrate where it has no oxygen, and each nitrogen that
    leaves so gives back half of the base that making nitrate took. The sludge grows; nitrate stands highest on day {nitrate-day},
    and pH is lowest on <strong>day {ph-day}</strong>, at {ph-low}. From then on nitrate falls and pH climbs, to {ph-end} on day
    90.</p>`,
  sliders: {
    feed: { label: 'Feed', unit: 'g/d' },
    base: { label: 'Potassium bicarbonate', unit: 'g/week' },
    alkalinity: { label: 'Alkalinity of the mains', unit: 'mg/L as CaCO₃' },
    air: { label: 'Carbon dioxide in the air of the house', unit: 'ppm' },
  },
  changed: `<p>Lowest pH {lowest} on day {lowest-day}. At the end: alkalinity {alkalinity} meq/L, pH {end}, ammonia {tan}
    mg N/L.</p>`,
  wrong: [
    'Dosing to a pH: the same pH can hide very different alkalinity. How much carbon dioxide is left in the water depends on the air stones and on the air of the house: close it for the night, and pH is lower at the same alkalinity. Measure both.',
    'Raising pH fast while ammonia is high turns harmless ammonium into poisonous ammonia.',
    'Dosing on when nitrate falls: sludge gives base as well, pH climbs past 8, and there more of the ammonia is poisonous.',
    'Draining the settled solids, which is good for much, and forgetting that their base goes with them.',
    'This model has no phosphate and no organic acid. Lime dissolves and falls in it, how fast is not well known: see the what-if <code>limestone</code>.',
  ],
  caution:
    'Lime, potassium hydroxide and other strong bases burn skin and eyes: gloves, goggles, small doses into the sump, never into a tank with fish.',
  exercise:
    'Two charges of acid are made for each nitrogen that becomes nitrate. How many grams of alkalinity as CaCO₃ does 1 g of nitrogen take?',
  answer: `<p>1 g N is 1/{molar} mol; two equivalents of 50 g each make {grams} g. 100 g of this feed hold {feed-nitrogen} g of
    nitrogen; not all of it is nitrified. Nitrate that becomes gas gives half back, {back} g; crops that take up nitrate give only
    an eighth of an equivalent a mole.</p>`,
  readings: [
    'feed, g/d',
    'base, g/week',
    'mains, mg/L as CaCO₃',
    'lowest pH, day',
    'alkalinity at the end, meq/L',
  ],
  labels: {
    alkalinityChart: 'Alkalinity in the sump',
    alkalinityUnit: 'alkalinity, meq/L',
    alkalinity: 'alkalinity',
    pHChart: 'pH in the sump',
    nitrateChart: 'Nitrate in the sump',
    nitrateUnit: 'nitrate, mg N/L',
    nitrate: 'nitrate',
    lowForFish: 'low for fish',
    half: 'half gone: the warning',
    late: 'ammonia over the guide',
    never: '(never)',
    lowest: 'lowest',
    highest: 'highest',
  },
} as const;
