/** What is wrong with one value, before it is known where it stands. */
export interface Complaint {
  readonly problem: string;
  readonly expected?: string;
  readonly nearest?: string;
  /** Of a value with several forms: the one that it was meant in, whose complaints say what is wrong. */
  readonly form?: number;
}

/** A complaint as the one text that a validation issue carries. */
export function complain(complaint: Complaint): string {
  return JSON.stringify(complaint);
}

/** The complaint in an issue's text; a text of another kind becomes the problem itself. */
export function hear(message: string): Complaint {
  return message.startsWith('{"problem"') ? (JSON.parse(message) as Complaint) : { problem: message };
}

/** The usual complaint about a value that is not there or not of the kind expected. */
export function kindComplaint(input: unknown, expected: string): string {
  if (input === undefined) return complain({ problem: 'missing', expected });
  if (typeof input === 'number' && !Number.isFinite(input)) {
    return complain({ problem: 'not a finite number', expected });
  }
  return complain({ problem: 'wrong kind of value', expected });
}
