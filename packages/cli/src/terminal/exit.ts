/** Exit codes of the command. */
export const exit = {
  /** All was done. */
  done: 0,
  /** A file could not be read or written, or says something that cannot be. */
  badInput: 2,
  /** The run broke off before its end, or a fit failed by its own verdict; what it has is printed. */
  notFinished: 3,
  /** Something conserved was made or lost. */
  balanceBroken: 4,
  /** The command line itself is wrong. */
  badUsage: 5,
  /** A fault of ours. */
  ourBug: 70,
  /** Stopped by Ctrl-C; what was done is kept. */
  interrupted: 130,
  /** Stopped by a polite kill (SIGTERM); what was done is kept. */
  terminated: 143,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];
