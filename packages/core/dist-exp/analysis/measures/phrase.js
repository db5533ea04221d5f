/** Words that join the parts of a measure or a condition. */
export const joints = ['averaged', 'from', 'to', 'above', 'below'];
const signs = { '>': 'above', '<': 'below' };
const isJoint = (word) => joints.includes(word);
/** Cuts a phrase at its joining words; `>` and `<` stand for `above` and `below`. */
export function phraseOf(text) {
    const words = text
        .replace(/[<>](?!=)/g, (sign) => ` ${signs[sign]} `)
        .split(/\s+/)
        .filter((word) => word !== '');
    const first = words.findIndex(isJoint);
    const end = first < 0 ? words.length : first;
    const parts = [];
    for (const word of words.slice(end)) {
        const last = parts[parts.length - 1];
        if (isJoint(word))
            parts.push({ joint: word, text: '' });
        else
            parts[parts.length - 1] = { ...last, text: `${last.text} ${word}`.trim() };
    }
    return { head: words.slice(0, end), parts };
}
/** The phrase in its plain form, one space between words. */
export function phraseText({ head, parts }) {
    return [...head, ...parts.map(({ joint, text }) => `${joint} ${text}`)].join(' ');
}
/** A run that cannot answer for a measure: it broke off, or nobody was there to be measured. */
export class NoAnswerError extends Error {
    name = 'NoAnswerError';
}
//# sourceMappingURL=phrase.js.map