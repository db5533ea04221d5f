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
    return {
      time,
      y: this.copy(y),
      x: this.copy(x),
      volume: this.along(water.volume, water.slope, since),
      carried: this.along(water.carried, water.flow, since),
      rain: water.rain + water.rainSlope * since,
      spilled: water.spilled + water.spillSlope * since,
      posted: record.postings.length,
      temperature: this.copy(day.temperature),
      ionic: this.copy(day.ionic),
      fed: this.fedAt(y),
      evapotranspiration: this.vapour.reduce((sum, s) => sum + water.flow[s], 0),
    };
  }

  private copy(values: Float64Array): Float64Array {
    const kept = this.buffer.array(values.length);
    kept.set(values);
    return kept;
  }

  /** Values that have moved along straight lines for some time. */
  private along(values: Float64Array, slope: Float64Array, since: number): Float64Array {
    const moved = this.buffer.array(values.length);
    for (let i = 0; i < moved.length; i++) moved[i] = values[i] + slope[i] * since;
    return moved;
  }

  /** Feed offered to each cohort. */
  private fedAt(y: Float64Array): Float64Array {
    const { model, state } = this.parts;
    const fed = this.buffer.array(state.day.offered.length);
    state.day.offered.forEach((offer, cohort) => {
      fed[cohort] = offer.fed + offer.share * y[model.layout.fish[cohort].mass];
    });
    return fed;
  }
}
