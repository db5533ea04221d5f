import { version, type Series } from '@leat/core';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { columnsOf, momentsOf } from '@leat/view/documents';

/** What a file of series is of. */
export interface CourseOf {
  readonly title: string;
  readonly startDate: string;
  /** d since the start. */
  readonly times: readonly number[];
}

/**
 * Series as Apache Parquet: wide, a row for each output time and a column for each series; or long, a row for each value. The
 * metadata of the file say the unit and the series of every column (`leat.columns`, JSON), title, date of day 0, version.
 */
export function parquet(
  { title, startDate, times }: CourseOf,
  series: readonly Pick<Series, 'name' | 'unit' | 'values'>[],
  long: boolean,
): Uint8Array {
  const columns = columnsOf(series);
  const dates = momentsOf(startDate, times);
  const metadata = {
    'leat.title': title,
    'leat.version': version,
    'leat.start-date': startDate,
    'leat.columns': JSON.stringify(columns.map(({ column, name, unit }) => ({ column, series: name, unit }))),
  };
  const each = <T>(give: (of: (typeof columns)[number]) => T): T[] =>
    columns.flatMap((of) => times.map(() => give(of)));
  const columnData = long
    ? [
        { name: 'time_d', data: columns.flatMap(() => times), type: 'DOUBLE' as const },
        { name: 'date', data: columns.flatMap(() => dates), type: 'TIMESTAMP' as const },
        { name: 'quantity', data: each(({ name }) => name.split('@')[0]), type: 'STRING' as const },
        { name: 'place', data: each(({ name }) => name.split('@')[1]), type: 'STRING' as const },
        { name: 'unit', data: each(({ unit }) => unit), type: 'STRING' as const },
        { name: 'value', data: columns.flatMap(({ values }) => Array.from(values)), type: 'DOUBLE' as const },
      ]
    : [
        { name: 'time_d', data: Float64Array.from(times), type: 'DOUBLE' as const },
        { name: 'date', data: [...dates], type: 'TIMESTAMP' as const },
        ...columns.map(({ column, values }) => ({ name: column, data: values, type: 'DOUBLE' as const })),
      ];
  const written = parquetWriteBuffer({
    columnData,
    createdBy: `leat ${version}`,
    kvMetadata: Object.entries(metadata).map(([key, value]) => ({ key, value })),
  });
  return new Uint8Array(written);
}
