import { checkPlausibleAction } from './plausible.js';
/** Whether a moment lies in a run that ends before day `end`; a fault where it does not. */
export function checkMoment(report, path, day, end) {
    if (day >= 0 && day < end)
        return true;
    report.fault(path, day < 0 ? 'before the start of the run' : 'not before the end of the run', {
        expected: `day 0 to before day ${end}`,
    });
    return false;
}
/** Whether exactly one of several ways to say how much (`what`) is taken; a fault where it is not. */
export function checkOneWay(report, path, what, ways) {
    if (Object.values(ways).filter((way) => way !== undefined).length === 1)
        return true;
    report.fault(path, `not one way to say ${what}`, { expected: `one of ${Object.keys(ways).join(', ')}` });
    return false;
}
/** Whether something about feeding changes; a fault that lists what could where nothing does. */
export function checkChanges(report, path, changes) {
    if (Object.values(changes).some((change) => change !== undefined))
        return true;
    const expected = `one or more of ${Object.keys(changes).join(', ')}`;
    report.fault(path, 'nothing that changes', { expected });
    return false;
}
/** Whether there is a float valve, and for a cap a supply that it holds for; a fault where not. */
export function checkTopUp(report, path, caps, topUp) {
    if (topUp === undefined) {
        report.lacks(path, 'top-up', 'top-up');
        return false;
    }
    if (!caps || topUp.sources.some(({ kind }) => kind === 'mains'))
        return true;
    report.fault(path, 'no supply that a cap could hold for', { expected: 'a water in top-up.from' });
    return false;
}
/** Whether carted water can be poured where it is to go; a fault where not. What is absent is not judged. */
export function checkCart(report, { into, water }, { rainTank, waters }, at) {
    if (into === 'rain-tank' && rainTank === undefined)
        report.lacks(at('into'), 'rain tank', 'rain-tank');
    if (water === undefined)
        return true;
    if (!report.known(water, waters, at('water'), 'water'))
        return false;
    if (into === 'reservoir' || rainTank === undefined || water === rainTank.water)
        return true;
    report.fault(at('water'), 'not what the rain tank holds', {
        expected: `${rainTank.water}, or into: reservoir`,
    });
    return false;
}
/** Checks that what an action names is there, and of the kind that it needs. */
export function checkTargets(report, action, cast, at) {
    const vessel = (name) => report.lookup(cast.vessels, name, at('vessel'), 'vessel');
    checkPlausibleAction(report, at, action, cast.cohorts, cast.vessels);
    switch (action.kind) {
        case 'stock':
        case 'harvest-fish':
        case 'lose-fish':
        case 'feed':
            report.known(action.cohort, cast.cohorts, at('cohort'), 'cohort');
            return;
        case 'grade':
            report.known(action.cohort, cast.cohorts, at('cohort'), 'cohort');
            report.known(action.to, cast.cohorts, at('to'), 'cohort');
            if (action.to === action.cohort)
                report.fault(at('to'), 'a cohort graded into itself');
            return;
        case 'plant':
        case 'harvest-crop':
        case 'leave-empty':
            report.known(action.planting, cast.plantings, at('planting'), 'planting');
            return;
        case 'top-up':
            checkTopUp(report, at(), action.dailyCap !== undefined || action.weeklyCap !== undefined, cast.topUp);
            return;
        case 'source-water':
            report.known(action.water, cast.waters, at('water'), 'water');
            return;
        case 'change-water': {
            const found = vessel(action.vessel);
            report.known(action.water, cast.waters, at('water'), 'water');
            if (action.volume !== undefined && found !== undefined && action.volume > found.volume)
                report.fault(at('volume'), `more than ${action.vessel} holds`, {
                    expected: `at most ${found.volume} m3`,
                });
            return;
        }
        case 'cart-water':
            checkCart(report, action, cast, at);
            return;
        case 'dose':
            vessel(action.vessel);
            report.known(action.product, cast.products, at('product'), 'product');
            return;
        case 'pump':
            report.known(action.pump, cast.pumps, at('pump'), 'pump');
            return;
        case 'aeration':
            if (vessel(action.vessel)?.aeration === 0)
                report.fault(at('vessel'), 'a vessel without aeration');
            return;
        case 'control':
            if (vessel(action.vessel) !== undefined && !cast.dosers.some((doser) => doser.vessel === action.vessel))
                report.fault(at('vessel'), 'a vessel without a doser', { expected: 'a vessel of `control`' });
            return;
        case 'clean':
        case 'medicate':
        case 'drain-solids':
            vessel(action.vessel);
    }
}
//# sourceMappingURL=actions.js.map