import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** A box for nodes that were made outside of the views: sections and pictures. They are made anew where `of` changes. */
export function Made({
  of,
  make,
  label,
}: {
  of: unknown;
  make: () => readonly Node[];
  label?: string;
}): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.replaceChildren(...make());
  }, [of]);
  return <div ref={box} {...(label !== undefined && { role: 'group', 'aria-label': label })} />;
}
