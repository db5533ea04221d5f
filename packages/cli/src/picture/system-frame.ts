/** How a system is laid out: wide with all words, or narrow with names alone. */
export interface SystemFrame {
  readonly direction: 'LR' | 'TB';
  readonly vesselWidth: number;
  readonly letters: number;
  /** Whether what a vessel holds stands in it. */
  readonly words: boolean;
  /** Widest way of water, px. */
  readonly widest: number;
  /** Room between vessels side by side, px. */
  readonly apart: number;
  /** Room from one vessel to the next along the water, px. */
  readonly step: number;
}

export const wideSystem: SystemFrame = {
  direction: 'LR',
  vesselWidth: 134,
  letters: 12,
  words: true,
  widest: 14,
  apart: 18,
  step: 50,
};

/** For a narrow screen, where few vessels stand side by side. */
export const roomySystem: SystemFrame = {
  direction: 'TB',
  vesselWidth: 156,
  letters: 12,
  words: true,
  widest: 12,
  apart: 10,
  step: 34,
};

export const narrowSystem: SystemFrame = {
  direction: 'TB',
  vesselWidth: 80,
  letters: 11,
  words: false,
  widest: 10,
  apart: 8,
  step: 34,
};
