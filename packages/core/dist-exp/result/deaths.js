import { hazardsIn, rowsOfDeaths } from '../model/hazards.js';
/** Accounts through which fish come to a cohort. */
const arrivals = ['stocked fish', 'graded fish'];
/** Fewer than half a fish: none is left. */
const NONE = 0.5;
/** Deaths between two samples by cause: in proportion to the hazards at both. */
function between(run, cohort, row, a, b) {
    const died = b.x[row] - a.x[row];
    const hazards = [a, b].flatMap((sample) => hazardsIn(run.model, cohort, sample));
    const whole = hazards.reduce((total, { perDay }) => total + perDay, 0);
    const found = new Map();
    for (const { cause, perDay } of hazards)
        found.set(cause, (found.get(cause) ?? 0) + (whole > 0 ? (died * perDay) / whole : 0));
    return found;
}
const most = (deaths) => [...deaths].reduce((best, each) => (each[1] > best[1] ? each : best), ['other', 0])[0];
function add(to, more) {
    for (const [cause, number] of more)
        to.set(cause, (to.get(cause) ?? 0) + number);
}
function ofCohort(run, cohort, row) {
    const { model, samples, postings } = run;
    const { name, species } = model.scenario.cohorts[cohort];
    const { number: state } = model.layout.fish[cohort];
    const causes = new Map();
    const days = new Map();
    let wipedOut;
    for (let i = 1; i < samples.length; i++) {
        const [a, b] = [samples[i - 1], samples[i]];
        const died = b.x[row] - a.x[row];
        if (!(died > 0))
            continue;
        const split = between(run, cohort, row, a, b);
        add(causes, split);
        const day = Math.floor((a.time + b.time) / 2);
        const ofDay = days.get(day) ?? new Map();
        add(ofDay, split);
        days.set(day, ofDay);
        if (a.y[state] >= NONE && b.y[state] < NONE && died >= (a.y[state] - b.y[state]) / 2)
            wipedOut = b.time;
        else if (b.y[state] >= NONE)
            wipedOut = undefined;
    }
    const last = samples[samples.length - 1];
    const came = postings
        .slice(0, last.posted)
        .filter(({ account, state: at, amount }) => at === state && amount > 0 && arrivals.includes(account))
        .reduce((total, { amount }) => total + amount, 0);
    return {
        cohort: name,
        species,
        stocked: (model.scenario.saved === undefined ? model.scenario.cohorts[cohort].number : samples[0].y[state]) +
            came,
        number: last.x[row] - samples[0].x[row],
        alive: last.y[state],
        causes: [...causes].map(([cause, number]) => ({ cause, number })).sort((a, b) => b.number - a.number),
        days: [...days].map(([day, split]) => ({
            day,
            number: [...split.values()].reduce((total, each) => total + each, 0),
            cause: most(split),
        })),
        ...(wipedOut !== undefined && { wipedOut }),
    };
}
/**
 * What died in a run, cohort by cohort in their order: how many, when, and of what. Numbers are of the integrated deaths;
 * causes are shared by the hazards at the outputs, so that an output step of an hour tells a short fright better than one of
 * a day. Fish that actions took out are not counted.
 */
export function deathsOf(run) {
    const rows = rowsOfDeaths(run.model);
    return run.model.scenario.cohorts.map((_, cohort) => ofCohort(run, cohort, rows[cohort]));
}
/**
 * Of each cohort the share that died, natural deaths apart. Each output step counts against the fish that were there in it,
 * so that fish that were sold before or came after do not thin a kill.
 */
export function sharesDead(run) {
    const rows = rowsOfDeaths(run.model);
    return run.model.layout.fish.map(({ number: state }, cohort) => {
        let left = 1;
        let halfBy;
        for (let i = 1; i < run.samples.length; i++) {
            const [a, b] = [run.samples[i - 1], run.samples[i]];
            const died = b.x[rows[cohort]] - a.x[rows[cohort]];
            if (!(died > 0))
                continue;
            const unnatural = died - (between(run, cohort, rows[cohort], a, b).get('other') ?? 0);
            // Fish may have come since the last output, or have been taken out.
            left *= 1 - Math.max(0, unnatural) / Math.max(a.y[state], b.y[state] + died);
            if (left <= 0.5)
                halfBy ??= b.time;
        }
        return { share: 1 - left, ...(halfBy !== undefined && { halfBy }) };
    });
}
//# sourceMappingURL=deaths.js.map