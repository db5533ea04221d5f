import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Proposal } from '@leat/core';
import { changedText } from '@leat/core/tasks';
import { cautionsIn, changePhrase, dayNames, planTold, verdictLines, yieldPhrase } from '@leat/view/text';
import {
  type AdviceTold,
  findAdvice,
  findPlan,
  findSizeOf,
  type PlanAndFile,
  type SizeTold,
} from '../engine/searches.js';
import { search, write } from '../state/actions.js';
import { beside, busy, display, main, shown, text, textsOf, words } from '../state/state.js';
import { NumberChoice } from './number-choice.js';
import { Table } from './table.js';

/** Opens a proposal as a system that lies over this one, which is put beside it. */
function openOver(after: Proposal['file']): void {
  const over = changedText(textsOf(), after, main.value, []);
  beside.value = new Map(beside.value).set(main.value, text.value);
  write(over, `${main.value.replace(/\.ya?ml$/i, '')}-changed.yaml`);
}

function Cautions(): JSX.Element {
  return (
    <ul class="note">
      {cautionsIn(display.value).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function Proposed({ advice, proposal }: { advice: AdviceTold; proposal: Proposal }): JSX.Element {
  const told = words.value;
  const { value: how } = display;
  const name = dayNames(advice.startDate, how);
  const { parts, outcome, lines } = proposal;
  return (
    <li>
      <strong>{parts.map((part) => changePhrase(part, name, how)).join(' + ')}</strong>
      <p>
        {told.then} {verdictLines(outcome.verdict, advice.startDate, how).join(' ')}
      </p>
      <p>
        {told.gives} {yieldPhrase(outcome, advice.before, how)}
      </p>
      {lines.out.length > 0 && (
        <>
          <p>{told.takeOut}</p>
          <pre>{lines.out.join('\n')}</pre>
        </>
      )}
      <p>{told.putIn}</p>
      <pre>{lines.put.join('\n')}</pre>
      <button type="button" onClick={() => openOver(proposal.file)}>
        {told.openAs}
      </button>
    </li>
  );
}

/** Most proposals that are told. */
const mostTold = 5;

/** What to change so that the run goes well. */
export function Advise(): JSX.Element {
  const [found, find] = useState<AdviceTold | undefined>(undefined);
  const told = words.value;
  const enough = found?.proposals.filter((each) => each.enough) ?? [];
  const list = enough.length > 0 ? enough : (found?.proposals ?? []);
  return (
    <>
      <button
        type="button"
        id="advise"
        disabled={busy.value !== undefined}
        onClick={() => void search((watch) => findAdvice(watch, textsOf())).then(find)}
      >
        {told.advise}
      </button>
      {found !== undefined && (
        <div aria-live="polite">
          <p class="answer">
            {found.aim === 'nothing'
              ? told.adviseNothing
              : enough.length > 0
                ? told.adviseEnough
                : told.adviseNone}
          </p>
          <ol>
            {list.slice(0, mostTold).map((proposal) => (
              <Proposed key={proposal.lines.put.join('|')} advice={found} proposal={proposal} />
            ))}
          </ol>
          <Cautions />
        </div>
      )}
    </>
  );
}

function Answer({ found }: { found: SizeTold }): JSX.Element {
  const told = words.value;
  const { answer, varied } = found;
  const value =
    answer.value === undefined ? '' : `${Number(answer.value.toPrecision(4))} ${varied.unit}`.trim();
  return (
    <div aria-live="polite">
      <p class="answer">
        {value !== '' && told.found(value)} {told.foundKinds[answer.kind]}
      </p>
      <Table
        caption={varied.path}
        head={[varied.unit === '' ? told.size : varied.unit, told.keepCondition]}
        rows={answer.trials.map((trial) => [
          String(Number(trial.value.toPrecision(4))),
          trial.holds ? '✓' : '✗',
        ])}
      />
      <Cautions />
    </div>
  );
}

/** The smallest or largest value of a number that keeps a condition. */
export function Size(): JSX.Element {
  const [path, choose] = useState('');
  const [ends, range] = useState({ from: '', to: '' });
  const [keep, hold] = useState('keeps limits');
  const [want, wish] = useState<'smallest' | 'largest'>('smallest');
  const [found, find] = useState<SizeTold | undefined>(undefined);
  const told = words.value;
  const quantities = (shown.value?.summary.account.series ?? []).map(
    ({ name, unit }) => `highest ${name} below 1 ${unit}`,
  );
  const start = (): void => {
    const shared = { texts: textsOf(), vary: [path], ...ends, keep: [keep], want, within: 0.01 };
    void search((watch) => findSizeOf(watch, shared)).then(find);
  };
  return (
    <>
      <div class="row">
        <NumberChoice
          id="size-of"
          label={told.number}
          path={path}
          choose={(to, number) => {
            choose(to);
            if (number === undefined) return;
            const end = (value: number): string => `${value} ${number.unit}`.trim();
            range({ from: end(number.value / 2), to: end(number.value * 2) });
          }}
        />
        <label>
          {told.least}
          <input
            id="size-from"
            value={ends.from}
            onChange={({ currentTarget }) => range({ ...ends, from: currentTarget.value })}
          />
        </label>
        <label>
          {told.most}
          <input
            id="size-to"
            value={ends.to}
            onChange={({ currentTarget }) => range({ ...ends, to: currentTarget.value })}
          />
        </label>
        <label>
          {told.keepCondition}
          <input
            id="size-keep"
            list="conditions"
            value={keep}
            onChange={({ currentTarget }) => hold(currentTarget.value)}
          />
          <datalist id="conditions">
            {['keeps limits', ...quantities].map((each) => (
              <option key={each} value={each} />
            ))}
          </datalist>
        </label>
        <label>
          {told.size}
          <select
            value={want}
            onChange={({ currentTarget }) => wish(currentTarget.value === 'largest' ? 'largest' : 'smallest')}
          >
            <option value="smallest">{told.smallest}</option>
            <option value="largest">{told.largest}</option>
          </select>
        </label>
        <button type="button" id="size" disabled={busy.value !== undefined || path === ''} onClick={start}>
          {told.size}
        </button>
      </div>
      {found !== undefined && <Answer found={found} />}
    </>
  );
}

function Planned({ plan }: { plan: PlanAndFile }): JSX.Element {
  const { value: how } = display;
  const told = planTold(plan, how);
  return (
    <div aria-live="polite">
      <p class="answer">{told.answer}</p>
      <ul>
        {told.quantities.map(({ name, amount, between }) => (
          <li key={name}>
            {name}: {amount} ({between})
          </li>
        ))}
        {verdictLines(plan.outcome.verdict, plan.startDate, how).map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>{told.kept}</li>
        {[...told.start, ...(told.dosers === undefined ? [] : [told.dosers])].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {[told.gives, ...told.calendar].map(({ title, head, rows }) => (
        <Table key={`${title} ${head.join(' ')}`} caption={title} head={head} rows={rows} />
      ))}
      <button type="button" id="open-plan" onClick={() => openOver(plan.file)}>
        {words.value.openAs}
      </button>
      <Cautions />
    </div>
  );
}

const aims = ['most harvest', 'most fish', 'least water', 'least feed', 'most income'];

/** How much there may be of beds and fish for an aim, and what to do week by week. */
export function Plan(): JSX.Element {
  const [aim, wish] = useState('most harvest');
  const [ration, cap] = useState('');
  const [found, find] = useState<PlanAndFile | undefined>(undefined);
  const told = words.value;
  const start = (): void => {
    const shared = {
      texts: textsOf(),
      vary: [],
      aim,
      keep: [],
      members: 8,
      seed: 1,
      ...(ration !== '' && { ration }),
    };
    void search((watch) => findPlan(watch, shared)).then(find);
  };
  return (
    <>
      <div class="row">
        <label>
          {told.aim}
          <input
            id="plan-aim"
            list="aims"
            value={aim}
            onChange={({ currentTarget }) => wish(currentTarget.value)}
          />
          <datalist id="aims">
            {aims.map((each) => (
              <option key={each} value={each} />
            ))}
          </datalist>
        </label>
        <label>
          {told.ration}
          <input value={ration} onChange={({ currentTarget }) => cap(currentTarget.value.trim())} />
        </label>
        <button type="button" id="plan" disabled={busy.value !== undefined} onClick={start}>
          {told.plan}
        </button>
      </div>
      {found !== undefined && <Planned plan={found} />}
    </>
  );
}
