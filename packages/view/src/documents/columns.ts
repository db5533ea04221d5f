import { dateAfter, type Series } from '@leat/core';

/** A column of numbers with the series that it is of. */
export interface Column extends Pick<Series, 'name' | 'unit' | 'values'> {
  /** A name that R and Python take as it is: letters, digits and underscores, with its unit. */
  readonly column: string;
}

const words = (text: string): string => text.replace(/[^A-Za-z0-9]+/g, '_').replace(/^_+|_+$/g, '');

/** `tan@tank` in `mg N/L` as `tan_tank_mg_N_per_L`; a pure number, and pH, have no unit. */
function columnName(name: string, unit: string): string {
  const plain = unit === '1' || words(name).split('_').includes(unit);
  const said = words(name) || 'value';
  return plain ? said : `${said}_${words(unit.replaceAll('/', ' per '))}`;
}

/** Columns of series, each with a name of its own. */
export function columnsOf(series: readonly Pick<Series, 'name' | 'unit' | 'values'>[]): readonly Column[] {
  const seen = new Set(['time_d', 'date']);
  return series.map(({ name, unit, values }) => {
    const wanted = columnName(name, unit);
    let column = wanted;
    for (let n = 2; seen.has(column.toLowerCase()); n++) column = `${wanted}_${n}`;
    seen.add(column.toLowerCase());
    return { name, unit, values, column };
  });
}

/** The moments of a run, UTC. */
export function momentsOf(startDate: string, times: readonly number[]): readonly Date[] {
  const start = Date.parse(`${dateAfter(startDate, 0)}T00:00Z`);
  return times.map((time) => new Date(start + Math.round(time * 1440) * 60_000));
}

/** The same as texts of one form: days, or where one lies within a day, all with hours and minutes. */
export function datesOf(startDate: string, times: readonly number[]): readonly string[] {
  const moments = momentsOf(startDate, times);
  const whole = moments.every((moment) => moment.getTime() % 86_400_000 === 0);
  return moments.map((moment) =>
    moment
      .toISOString()
      .slice(0, whole ? 10 : 16)
      .replace('T', ' '),
  );
}
