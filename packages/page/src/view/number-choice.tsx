import type { JSX } from 'preact';
import type { TextNumber } from '../editor/numbers.js';
import { numbers } from '../state/state.js';

/** A choice of one number of the text. */
export function NumberChoice({
  id,
  label,
  path,
  choose,
}: {
  id: string;
  label: string;
  path: string;
  choose: (path: string, number: TextNumber | undefined) => void;
}): JSX.Element {
  const all = numbers.value;
  return (
    <label>
      {label}
      <select
        id={id}
        value={path}
        onChange={({ currentTarget: { value } }) =>
          choose(
            value,
            all.find((each) => each.path === value),
          )
        }
      >
        <option value="" />
        {all.map((each) => (
          <option key={each.path} value={each.path}>
            {each.path}: {each.value} {each.unit} {each.file === undefined ? '' : `(${each.file})`}
          </option>
        ))}
      </select>
    </label>
  );
}
