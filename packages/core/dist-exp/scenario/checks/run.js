import { most } from './ranges.js';
/** Bounds the outputs of a run. */
export function checkOutputs(report, { days, every }) {
    if (days / every > most.outputs)
        report.fault(['every'], 'too many outputs', {
            got: String(Math.ceil(days / every)),
            expected: `at most ${most.outputs} in a run`,
        });
}
/** Bounds what a run keeps before it is begun: outputs times vessels. */
export function checkKept(report, { days, every }, vessels) {
    const outputs = Math.ceil(days / every);
    if (outputs > most.outputs || outputs * vessels <= most.values)
        return;
    report.fault(['every'], 'too many outputs for so many vessels', {
        got: `${outputs} outputs of ${vessels} vessels`,
        expected: `at most ${most.values} outputs times vessels`,
    });
}
//# sourceMappingURL=run.js.map