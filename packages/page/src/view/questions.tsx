import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import {
  answerFaults,
  type Answers,
  defaultAnswers,
  groups,
  isAsked,
  optionName,
  type Question,
  questions,
  questionWords,
  writeSystem,
} from '@leat/view/questions';
import { run, write } from '../state/actions.js';
import { display, language, words } from '../state/state.js';

type Answer = Answers[keyof Answers];

interface Field {
  readonly question: Question;
  readonly answer: Answer;
  readonly answered: (answer: Answer) => void;
}

const number = (text: string): number => (text.trim() === '' ? Number.NaN : Number(text.replace(',', '.')));

/** What a question is answered with. */
function Answering({ question, answer, answered }: Field): JSX.Element {
  const told = questionWords[language.value];
  const { id } = question;
  switch (question.kind) {
    case 'number':
      return (
        <span class="amount">
          <input
            id={`ask-${id}`}
            type="number"
            step="any"
            inputMode="decimal"
            value={Number.isNaN(answer) ? '' : String(answer)}
            onChange={({ currentTarget }) => answered(number(currentTarget.value))}
          />
          {question.unit}
        </span>
      );
    case 'choice':
      return (
        <select
          id={`ask-${id}`}
          value={String(answer)}
          onChange={({ currentTarget }) => answered(currentTarget.value)}
        >
          {question.options.map((option) => (
            <option key={option} value={option}>
              {optionName(told, id, option)}
            </option>
          ))}
        </select>
      );
    case 'several': {
      const chosen = answer as readonly string[];
      return (
        <span class="several">
          {question.options.map((option) => (
            <label key={option} class="check">
              <input
                type="checkbox"
                checked={chosen.includes(option)}
                onChange={({ currentTarget: { checked } }) =>
                  answered(checked ? [...chosen, option] : chosen.filter((each) => each !== option))
                }
              />
              {optionName(told, id, option)}
            </label>
          ))}
        </span>
      );
    }
    case 'months': {
      const values = answer as readonly number[];
      return (
        <span class="months">
          {values.map((value, i) => (
            <label key={i}>
              {display.value.months[i]}
              <input
                type="number"
                step="any"
                value={Number.isNaN(value) ? '' : String(value)}
                onChange={({ currentTarget }) =>
                  answered(values.map((each, j) => (j === i ? number(currentTarget.value) : each)))
                }
              />
            </label>
          ))}
          {question.unit}
        </span>
      );
    }
  }
}

/** The questions, and the system that is written from their answers. */
export function Questions(): JSX.Element {
  const [answers, answer] = useState<Answers>(defaultAnswers);
  const told = questionWords[language.value];
  const faults = answerFaults(answers, told);
  const asked = questions.filter((question) => isAsked(question, answers));
  const make = (): void => {
    write(writeSystem(answers, { words: told }), 'my-system.yaml');
    void run();
  };
  return (
    <form
      class="questions"
      onSubmit={(event) => {
        event.preventDefault();
        make();
      }}
    >
      {groups.map((group) => (
        <fieldset key={group}>
          <legend>{told.groups[group]}</legend>
          {asked
            .filter((question) => question.group === group)
            .map((question) => {
              const { ask, help } = told.questions[question.id];
              const wrong = faults.filter(({ questions: of }) => of.includes(question.id));
              const several = question.kind === 'several' || question.kind === 'months';
              const text = several ? (
                <span class="ask">{ask}</span>
              ) : (
                <label for={`ask-${question.id}`}>{ask}</label>
              );
              return (
                <div
                  key={question.id}
                  class="question-row"
                  {...(several && { role: 'group', 'aria-label': ask })}
                >
                  {text}
                  <Answering
                    question={question}
                    answer={answers[question.id]}
                    answered={(value) => answer({ ...answers, [question.id]: value })}
                  />
                  <small>{help}</small>
                  {wrong.map(({ problem }) => (
                    <p key={problem} class="warn" role="alert">
                      {problem}
                    </p>
                  ))}
                </div>
              );
            })}
        </fieldset>
      ))}
      <button type="submit" class="main" disabled={faults.length > 0}>
        {words.value.formMake}
      </button>
    </form>
  );
}
