import type { Sample } from './run.js';
import type { RunParts } from './run-state.js';
import type { SampleBuffer } from './sample-buffer.js';

/** Takes samples of a run into its record. */
export class Sampler {
  /** Streams that evaporate. */
  private readonly vapour: readonly number[];

  constructor(
    private readonly parts: RunParts,
    private readonly buffer: SampleBuffer,
  ) {
    this.vapour = parts.model.streams.flatMap(({ kind }, s) =>
      kind === 'evaporation' || kind === 'transpiration' ? [s] : [],
    );
  }

  /**
   * Takes a sample within a segment, for the series or, between the output times, for a close look at what happens.
   * @param y states at the time
   * @param x extents at the time
   * @param since d since the water was last moved, along whose straight lines volumes are read
   */
  take(
    time: number,
    y: Float64Array,
    x: Float64Array,
    since: number,
    into: 'samples' | 'between' = 'samples',
  ): void {
    this.parts.record[into].push(this.look(time, y, x, since));
  }

  /** The sample that `take` takes, kept nowhere. */
  look(time: number, y: Float64Array, x: Float64Array, since: number): Sample {
    const { record, state } = this.parts;
    const { water, day } = state;
    const { temperature, ionic, offered } = day;
    // One array for all: each of its own would cost a run more than what is done with them.
    const all = [y, x, water.volume, water.carried, temperature, ionic, offered];
    const { buffer, byteOffset } = this.buffer.array(all.reduce((size, { length }) => size + length, 0));
    let next = byteOffset;
    const cut = (length: number): Float64Array => {
      const part = new Float64Array(buffer, next, length);
      next += part.byteLength;
      return part;
    };
    /** Values as they are, or moved along straight lines for some time. */
    const copy = (values: Float64Array, slope?: Float64Array): Float64Array => {
      const kept = cut(values.length);
      kept.set(values);
      if (slope) for (let i = 0; i < kept.length; i++) kept[i] += slope[i] * since;
      return kept;
    };
    return {
      time,
      y: copy(y),
      x: copy(x),
      volume: copy(water.volume, water.slope),
      carried: copy(water.carried, water.flow),
      rain: water.rain + water.rainSlope * since,
      spilled: water.spilled + water.spillSlope * since,
      posted: record.postings.length,
      temperature: copy(temperature),
      ionic: copy(ionic),
      fed: this.fedAt(y, cut(offered.length)),
      evapotranspiration: this.vapour.reduce((sum, s) => sum + water.flow[s], 0),
    };
  }

  /** Feed offered to each cohort. */
  private fedAt(y: Float64Array, fed: Float64Array): Float64Array {
    const { model, state } = this.parts;
    state.day.offered.forEach((offer, cohort) => {
      fed[cohort] = offer.fed + offer.share * y[model.layout.fish[cohort].mass];
    });
    return fed;
  }
}
