import { nearest } from '../../base/nearest.js';
/** Names are words that may stand in a series name such as `nitrate@sump`. */
const namePattern = /^[A-Za-z][A-Za-z0-9_-]{0,63}$/;
/** Collects what is wrong with a system, each fault at the path of the value it is about. */
export class Report {
    faults = [];
    /** The name that is most likely meant by one that is not known. */
    guess(name, names) {
        return nearest(name, names);
    }
    /** Checks a name that is given to something, at the path where it stands. */
    checkName(name, path, aboutKey = false) {
        if (namePattern.test(name))
            return;
        const expected = 'a letter, then letters, digits, - and _, at most 64';
        this.fault(path, 'not a name', { got: JSON.stringify(name.slice(0, 70)), expected }, aboutKey);
    }
    /** Whether a section has no more entries than it may; a fault where it has. */
    checkCount(section, count, most) {
        if (count <= most)
            return true;
        this.fault(section, 'too many entries', { got: String(count), expected: `at most ${most}` }, true);
        return false;
    }
    /** Checks a name against those there are. A name of a faulty entry is no second fault. */
    known(name, names, path, what) {
        if ('has' in names ? names.has(name) : names.includes(name))
            return true;
        const all = 'has' in names ? [...names.keys()] : [...names];
        // A file without vessels was told so.
        if (all.length === 0 && what === 'vessel')
            return false;
        const guess = this.guess(name, all);
        const listing = all.length === 0
            ? `a ${what} of this ${this.origin}, which has none`
            : `one of ${all.slice(0, 12).join(', ')}${all.length > 12 ? ' ...' : ''}`;
        const hint = guess === undefined ? { expected: listing } : { nearest: guess };
        this.fault(path, `unknown ${what}`, { ...this.gotName(name), ...hint });
        return false;
    }
    /** The entry of that name; undefined (and a fault, unless the entry itself is faulty) where there is none. */
    lookup(named, name, path, what) {
        return this.known(name, named, path, what) ? named.get(name) : undefined;
    }
}
//# sourceMappingURL=report.js.map