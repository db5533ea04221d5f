import type { JSX } from 'preact';

/** A table of texts; it scrolls sideways where it is wide. */
export function Table({
  caption,
  head,
  rows,
}: {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
}): JSX.Element {
  return (
    <div class="scroll" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {head.map((each) => (
              <th key={each} scope="col">
                {each}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.join('|')}>
              {row.map((each, i) => (i === 0 ? <th scope="row">{each}</th> : <td>{each}</td>))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
