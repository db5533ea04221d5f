/** Examples of every command, as they stand in its help and in the manual: what follows `leat`, and what it does. */
export const examples: Readonly<Record<string, readonly (readonly [args: string, what: string])[]>> = {
  run: [
    ['run system.yaml', 'the summary of a run'],
    ['run system.yaml --days 30 --set "fish.tilapia.ration=300 g/d"', 'another length, another ration'],
    ['run system.yaml --json', 'everything as one document'],
  ],
  check: [
    ['check system.yaml', 'is it sound, before it is run?'],
    ['check system.yaml --table', 'the stoichiometric table'],
  ],
  compare: [['compare before.yaml after.yaml --days 60', 'two systems side by side']],
  why: [
    ['why before.yaml after.yaml --of nitrate@sump --at 60d', 'what made the difference'],
    ['why before.yaml after.yaml --of nitrate@sump --by change', 'which of the changes made it'],
    ['why system.yaml --of nitrate@sump --from 10d --to 60d', 'what made the change'],
  ],
  advise: [
    ['advise system.yaml', 'what to do about a run that goes wrong'],
    [
      'advise system.yaml --change feed --from 14d --keep "highest nitrate@sump below 40 mg N/L"',
      'empty beds: how far must feed be cut?',
    ],
    ['advise system.yaml --save advised.yaml', 'the first proposal as a scenario that runs'],
  ],
  report: [['report system.yaml --out report.html', 'a page with pictures']],
  plot: [
    ['plot system.yaml --of tan@tank-1 nitrite@tank-1 --limits --out peak.svg', 'a picture for a slide'],
  ],
  steady: [['steady system.yaml --hold nitrate', 'what it settles to']],
  size: [
    [
      'size system.yaml --vary "fish.*.ration" --from 0.2 --to 2 --largest --keep "highest tan@tank below 1 mg N/L"',
      'how far may all rations go?',
    ],
    [
      'size system.yaml --vary vessels.biofilter.media.volume --from "20 L" --to "2 m3" --keep "keeps limits"',
      'the smallest filter that will do',
    ],
  ],
  plan: [
    ['plan system.yaml --ration "160 L/d"', 'how many m2 and how many fish on so much water'],
    [
      'plan system.yaml --aim "most fish" --vary "fish=10:60" --save planned.yaml',
      'most fish on the beds there are, as a scenario that runs',
    ],
  ],
  sweep: [
    [
      'sweep system.yaml --vary "fish.tilapia.ration=100 g/d:400 g/d:4" --of "highest tan@tank-1"',
      'one outcome over a range of rations',
    ],
  ],
  ensemble: [
    ['ensemble system.yaml --members 100 --seed 1', 'bands of every series'],
    ['ensemble system.yaml --members 1000 --shard 3/8 --out part-3.ens', 'one part of eight'],
  ],
  merge: [['merge part-1.ens part-2.ens --out whole.ens', 'the parts put together']],
  sensitivity: [
    ['sensitivity system.yaml --of "highest tan@tank-1" --method local', 'which numbers matter'],
    ['sensitivity system.yaml --of "highest tan@tank-1" --over mine', 'what should I measure better?'],
  ],
  log: [
    ['log tests.csv --write-map tests.map', 'guess what the columns hold'],
    ['log tests.csv --map tests.map --system system.yaml', 'read it, beside the system it is of'],
  ],
  fit: [['fit system.yaml --log tests.csv --map tests.map --out fit.json', 'fit the system to its log']],
  forecast: [
    ['forecast system.yaml --log tests.csv --map tests.map --fit fit.json --days 14', 'two weeks ahead'],
  ],
  backtest: [
    ['backtest system.yaml --log tests.csv --map tests.map', 'what forecasts would have been worth'],
  ],
  show: [
    ['show', 'the tables'],
    ['show nile-tilapia', 'all of one species'],
    ['show aob.growth', 'one number with its source'],
  ],
  new: [
    ['new --list', 'what there is'],
    ['new double-stock --out mine.yaml', 'a copy to change'],
    ['new --ask mine.yaml', 'your own system, by questions'],
  ],
  completion: [
    ['completion bash > ~/.local/share/bash-completion/completions/leat', 'for bash'],
    ['completion zsh > ~/.zfunc/_leat', 'for zsh: a folder of $fpath'],
    ['completion fish > ~/.config/fish/completions/leat.fish', 'for fish'],
  ],
};
