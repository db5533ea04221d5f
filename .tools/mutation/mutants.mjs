import ts from 'typescript';

const swaps = new Map([
  [ts.SyntaxKind.PlusToken, [['sign', '-']]],
  [ts.SyntaxKind.MinusToken, [['sign', '+']]],
  [ts.SyntaxKind.AsteriskToken, [['factor', '/']]],
  [ts.SyntaxKind.SlashToken, [['factor', '*']]],
  [ts.SyntaxKind.PlusEqualsToken, [['sign', '-=']]],
  [ts.SyntaxKind.MinusEqualsToken, [['sign', '+=']]],
  [ts.SyntaxKind.AsteriskEqualsToken, [['factor', '/=']]],
  [ts.SyntaxKind.SlashEqualsToken, [['factor', '*=']]],
  [
    ts.SyntaxKind.LessThanToken,
    [
      ['comparison', '<='],
      ['comparison', '>='],
    ],
  ],
  [
    ts.SyntaxKind.LessThanEqualsToken,
    [
      ['comparison', '<'],
      ['comparison', '>'],
    ],
  ],
  [
    ts.SyntaxKind.GreaterThanToken,
    [
      ['comparison', '>='],
      ['comparison', '<='],
    ],
  ],
  [
    ts.SyntaxKind.GreaterThanEqualsToken,
    [
      ['comparison', '>'],
      ['comparison', '<'],
    ],
  ],
  [ts.SyntaxKind.EqualsEqualsEqualsToken, [['comparison', '!==']]],
  [ts.SyntaxKind.ExclamationEqualsEqualsToken, [['comparison', '===']]],
  [ts.SyntaxKind.AmpersandAmpersandToken, [['logic', '||']]],
  [ts.SyntaxKind.BarBarToken, [['logic', '&&']]],
]);

/** A whole number moves by one, another by a tenth of itself. */
function otherNumber(text) {
  const value = Number(text.replaceAll('_', ''));
  return Number.isInteger(value) ? String(value + 1) : String(value * 1.1);
}

/**
 * Every change of one place in a file: signs, factors, coefficients, indices, comparisons, logic, terms of a row.
 * @returns list of { kind, start, end, text, line, was }: the text from start to end becomes `text`
 */
export function mutantsOf(path, text) {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found = [];
  const add = (kind, node, changed) => {
    const start = node.getStart(source);
    const line = source.getLineAndCharacterOfPosition(start).line + 1;
    found.push({ kind, start, end: node.end, text: changed, line, was: text.slice(start, node.end) });
  };
  const words = (node) => node.getText(source);
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isInterfaceDeclaration(node)) return;
    if (ts.isTypeAliasDeclaration(node)) return;
    // The text of a message is not arithmetic.
    if (ts.isThrowStatement(node)) return;
    if (ts.isBinaryExpression(node)) {
      for (const [kind, changed] of swaps.get(node.operatorToken.kind) ?? [])
        add(kind, node.operatorToken, changed);
    }
    if (ts.isPrefixUnaryExpression(node)) {
      if (node.operator === ts.SyntaxKind.MinusToken) add('sign', node, words(node.operand));
      if (node.operator === ts.SyntaxKind.ExclamationToken) add('logic', node, words(node.operand));
    }
    if (ts.isElementAccessExpression(node) && !ts.isStringLiteral(node.argumentExpression)) {
      add('index', node.argumentExpression, `(${words(node.argumentExpression)}) + 1`);
    }
    if (
      ts.isNumericLiteral(node) &&
      !(ts.isElementAccessExpression(node.parent) && node.parent.argumentExpression === node)
    ) {
      add('coefficient', node, otherNumber(words(node)));
    }
    if (ts.isConditionalExpression(node)) {
      add('logic', node, `${words(node.condition)} ? ${words(node.whenFalse)} : ${words(node.whenTrue)}`);
    }
    if (
      ts.isObjectLiteralExpression(node) &&
      node.properties.some((p) => p.name && words(p.name) === 'component')
    ) {
      add('term', node, '...[]');
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
