/** The text of tables.generated.ts made anew from the tables. */
export function generate(): string;
/** The text of tables.generated.ts on disk. */
export function generated(): string;
