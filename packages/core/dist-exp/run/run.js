const advice = {
    done: '',
    'step-too-small': 'the step fell below what numbers can resolve: usually a vessel of almost no water, a huge flow or a rate without its substrate',
    'too-many-steps': 'the work limit was reached: usually a timer of seconds over months, or a tolerance far too fine',
    'not-finite': 'a rate was not a finite number: usually water outside pH 0-14 (alkalinity without carbon) or a parameter of zero in a divisor',
    singular: 'the linear system could not be solved: usually a parameter that is infinite or a vessel of no water',
    chattering: 'water switched states thousands of times in a day: usually a pump whose restart level is too near its inlet',
    'negative-state': 'an amount went below zero by more than the tolerance: a rate does not stop when its substrate ends',
};
/** The usual reasons of an ending and what to look at. */
export function adviceFor(kind) {
    return advice[kind];
}
//# sourceMappingURL=run.js.map