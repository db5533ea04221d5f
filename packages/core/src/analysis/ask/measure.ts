import { InputError, type Fault } from '../../errors.js';
import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import { nearest } from '../../suggest.js';
import { daysMeasure } from './days-measure.js';
import { NoAnswerError } from './no-answer-error.js';
import { joints, phraseOf, phraseText, type Phrase } from './phrase.js';
import type { MeasureReading } from './reading.js';
import type { Scale } from './scale.js';
import { shareMeasure } from './share-measure.js';
import { statisticMeasure, statisticNames } from './statistic-measure.js';

/** One number that a whole run gives. */
export interface Measure extends Scale {
  /** As asked, one space between words. */
  readonly text: string;
  /**
   * The number, in `unit`. Throws NoAnswerError where the run broke off or has no value to be counted.
   */
  of(run: Run): number;
}

const kinds = [...statisticNames, 'days', 'share'];

/** Faults of parts that a measure does not take or takes once. */
function partFaults({ parts }: Phrase, taken: readonly string[]): Fault[] {
  return parts.flatMap(({ joint, words }, i): Fault[] => {
    if (!taken.includes(joint)) return [{ got: `${joint} ${words}`, problem: 'does not belong here' }];
    const again = parts.findIndex((part) => part.joint === joint) < i;
    return again ? [{ got: `${joint} ${words}`, problem: `${joint} is said twice` }] : [];
  });
}

/** A word too many before the first joining word is mostly a joining word misspelled. */
function headFaults({ head }: Phrase, length: number): Fault[] {
  const extra = head[length];
  if (extra === undefined) return [];
  const near = nearest(extra, joints);
  return [
    {
      got: head.slice(length).join(' '),
      problem: 'not understood',
      expected: joints.join(', '),
      ...(near && { nearest: near }),
    },
  ];
}

function readMeasure(phrase: Phrase, model: Model): MeasureReading {
  const [kind, ...rest] = phrase.head;
  switch (kind) {
    case 'days': {
      const faults = [...headFaults(phrase, 2), ...partFaults(phrase, joints)];
      return faults.length > 0 ? faults : daysMeasure(rest, phrase.parts, model);
    }
    case 'share': {
      const faults = [...headFaults(phrase, 3), ...partFaults(phrase, [])];
      return faults.length > 0 ? faults : shareMeasure(rest);
    }
    default: {
      const statistic = statisticNames.find((name) => name === kind);
      if (statistic === undefined) {
        const near = nearest(kind ?? '', kinds);
        const got = kind ?? 'nothing';
        return [
          { got, problem: 'no such statistic', expected: kinds.join(', '), ...(near && { nearest: near }) },
        ];
      }
      const faults = [...headFaults(phrase, 2), ...partFaults(phrase, ['averaged', 'from', 'to'])];
      return faults.length > 0 ? faults : statisticMeasure(statistic, rest, phrase.parts, model);
    }
  }
}

/** Faults of a phrase, each saying which phrase and, with `where`, where it was written. */
export function phraseFaults(faults: readonly Fault[], text: string, where: string | undefined): Fault[] {
  return faults.map((fault) => ({ ...(where === undefined ? {} : { file: where }), key: text, ...fault }));
}

/**
 * Reads a measure from a phrase already cut. Throws InputError with every fault.
 * @param where what to name in faults, such as an option
 */
export function measureFrom(phrase: Phrase, model: Model, where?: string): Measure {
  const text = phraseText(phrase);
  const reading = readMeasure(phrase, model);
  if ('of' in reading) {
    return {
      ...reading,
      text,
      of: (run) => {
        const { kind, time } = run.outcome;
        if (kind !== 'done') throw new NoAnswerError(`the run broke off on day ${time}: ${kind}`);
        const value = reading.of(run);
        if (Number.isFinite(value)) return value;
        throw new NoAnswerError(`${text}: no value there to be counted`);
      },
    };
  }
  throw new InputError(phraseFaults(reading, text, where));
}

/**
 * Reads a measure, in words:
 *
 * - `highest|lowest|mean|first|last|change SERIES [averaged TIME] [from WHEN] [to WHEN]`
 * - `days SERIES above|below VALUE [averaged TIME] [from WHEN] [to WHEN]`: how long, in d
 * - `share QUANTITY FATE`: of all that came of a conserved quantity, the share that went there (names of
 *   `fatesOf`, hyphens for spaces), such as `share nitrogen kept-in-living-fish`
 *
 * WHEN is a time after the start or a date; VALUE is a number, one with a unit, or the id of a number of the tables.
 * @param model tells which series there are and when the run starts and ends
 * @param where what to name in faults, such as an option
 * Throws InputError with every fault.
 */
export function measureOf(text: string, model: Model, where?: string): Measure {
  return measureFrom(phraseOf(text), model, where);
}
