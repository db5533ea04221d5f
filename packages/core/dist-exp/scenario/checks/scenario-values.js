import { numberFrom } from '../../base/bounds.js';
import { checkDaily, listProblem } from './daily.js';
/** Any number that is finite: what lies before a run counts back from its start. */
export const anyNumber = numberFrom(-Infinity, Infinity);
/** Checks a daily value: its form, its numbers, and that it reaches to the end of the run. */
export function checkDailyValue(report, value, path, need) {
    if (!report.holds(value, path))
        return false;
    if (!report.oneOf(value.kind, ['constant', 'monthly', 'daily'], [...path, 'kind']))
        return false;
    const list = [...path, 'values'];
    const at = (index) => (value.kind === 'constant' ? [...path, 'value'] : [...list, index]);
    const values = value.kind === 'constant' ? [value.value] : value.values;
    if (!report.isList(values, list))
        return false;
    const short = value.kind === 'constant' ? undefined : listProblem(value.kind, values.length);
    if (short !== undefined) {
        report.fault(list, short.problem, { got: String(values.length), expected: short.expected });
        return false;
    }
    const faulty = values.findIndex((each) => !Number.isFinite(each));
    if (faulty >= 0)
        return report.within(values[faulty], anyNumber, at(faulty));
    return checkDaily(report, value.kind, values, need, { list, value: at });
}
/** Entries that have names, one by one: undefined where one is faulty. Names stand once. */
export function checkNamed(report, section, entries, limit, isSound) {
    const found = new Map();
    if (!report.checkCount([section], entries.length, limit))
        return found;
    entries.forEach((entry, index) => {
        const at = [section, index, 'name'];
        const { name } = entry;
        if (typeof name !== 'string') {
            report.fault(at, name === undefined ? 'missing' : 'wrong kind of value', { expected: 'a name' });
            return;
        }
        report.checkName(name, at);
        if (found.has(name)) {
            report.fault(at, 'a name given twice');
            return;
        }
        found.set(name, isSound(entry, [section, name]) ? entry : undefined);
    });
    return found;
}
//# sourceMappingURL=scenario-values.js.map