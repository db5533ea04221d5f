import { Application, ReflectionKind } from 'typedoc';

const holders = new Set(['Readonly', 'Record', 'Map', 'ReadonlyMap', 'ReadonlyArray']);

/** Whether a type is a number, or a list or table of numbers. */
function isNumber(type) {
  switch (type?.type) {
    case 'intrinsic':
      return type.name === 'number';
    case 'array':
    case 'optional':
      return isNumber(type.elementType);
    case 'typeOperator':
      return isNumber(type.target);
    case 'union':
      return type.types.some(isNumber);
    case 'tuple':
      return type.elements.some(isNumber);
    case 'namedTupleMember':
      return isNumber(type.element);
    case 'reference':
      if (/^(Int|Uint|Float)\d+Array$/.test(type.name)) return true;
      return holders.has(type.name) && (type.typeArguments ?? []).some(isNumber);
    default:
      return false;
  }
}

const written = (comment) =>
  [...(comment?.summary ?? []), ...(comment?.blockTags ?? []).flatMap(({ content }) => content)]
    .map(({ text }) => text)
    .join('');

/** Whether the comment of what a number belongs to names it, in backticks. */
function isNamedAbove(reflection) {
  for (let up = reflection.parent; up !== undefined; up = up.parent)
    for (const each of [up, ...(up.signatures ?? [])])
      if (written(each.comment).includes(`\`${reflection.name}\``)) return true;
  return false;
}

/** Whether it is asked for: properties, and what exported functions take. */
function isAsked(reflection) {
  if (reflection.kindOf(ReflectionKind.Property)) return true;
  return (
    reflection.kindOf(ReflectionKind.Parameter) && reflection.parent.parent.kindOf(ReflectionKind.Function)
  );
}

/**
 * A check of typedoc: a number says what it is and in which unit, in a comment of its own or by its name in backticks in
 * the comment of what it belongs to. What a name, a text or a list of things is, its type says.
 */
export function load(app) {
  app.on(Application.EVENT_VALIDATE_PROJECT, (project) => {
    for (const reflection of Object.values(project.reflections)) {
      if (!isAsked(reflection) || !isNumber(reflection.type)) continue;
      if (reflection.comment?.hasVisibleComponent() || isNamedAbove(reflection)) continue;
      app.logger.validationWarning(`${reflection.getFullName()} is a number without a word of what it is`);
    }
  });
}
