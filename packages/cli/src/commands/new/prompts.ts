import type { Asking, Prompts, ShownOption } from './ask.js';

/** Options shown at a time. */
const SHOWN = 12;

/** Questions put by @clack/prompts, which is loaded only here. It wants a terminal: without one it never settles. */
export async function openPrompts(): Promise<Prompts> {
  const { intro, isCancel, multiselect, outro, select, text } = await import('@clack/prompts');
  const settled = (answer: unknown): unknown => (isCancel(answer) ? undefined : answer);
  const message = ({ message: ask, help }: Asking): string => `${ask}\n${help}`;
  /** Asks a choice until nothing is wrong with it: the lists themselves cannot refuse an answer. */
  const until = async (asking: Asking, put: (message: string) => Promise<unknown>): Promise<unknown> => {
    for (let problem: string | undefined; ;) {
      const said = problem === undefined ? message(asking) : `${message(asking)}\n${problem}`;
      const answer = settled(await put(said));
      problem = answer === undefined ? undefined : asking.problem(answer);
      if (problem === undefined) return answer;
    }
  };
  const listed = (options: readonly ShownOption[]): { value: string; label: string }[] =>
    options.map(({ value, label }) => ({ value, label }));
  return {
    begin: (title) => {
      intro(title);
    },
    end: (next) => {
      outro(next);
    },
    async text(asking, usual, read) {
      const answerOf = (typed: string | undefined): unknown =>
        read(typed === undefined || typed.trim() === '' ? usual : typed);
      const answer = settled(
        await text({
          message: message(asking),
          placeholder: usual,
          defaultValue: usual,
          validate: (typed) => asking.problem(answerOf(typed)),
        }),
      );
      return typeof answer === 'string' ? answerOf(answer) : undefined;
    },
    one: (asking, usual, options) =>
      until(asking, (said) =>
        select({ message: said, options: listed(options), initialValue: usual, maxItems: SHOWN }),
      ),
    some: (asking, usual, options) =>
      until(asking, (said) =>
        multiselect({
          ...{ message: said, options: listed(options), initialValues: [...usual] },
          ...{ required: false, maxItems: SHOWN },
        }),
      ),
  };
}
