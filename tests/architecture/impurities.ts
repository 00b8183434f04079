import ts from 'typescript';
import type { SourceFile } from './sourceFiles.ts';

const CLOCKS_AND_CHANCE = /^(Date\.now|Math\.random|performance\.now|crypto\.\w+|console\.\w+)$/;

/** A container that is empty at the start can only be there to be filled. */
const isEmptyContainer = (value: ts.Expression | undefined): boolean => {
  if (!value) return false;
  if (ts.isNewExpression(value))
    return /^(Map|Set|WeakMap|WeakSet|Array)$/.test(value.expression.getText()) && !value.arguments?.length;
  if (ts.isArrayLiteralExpression(value)) return value.elements.length === 0;
  return ts.isObjectLiteralExpression(value) && value.properties.length === 0;
};

/** What makes a file's answers depend on more than its arguments: clock, chance, console, state at module level. */
export const impurities = ({ path, text }: SourceFile): string[] => {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const say = (node: ts.Node, what: string): void => {
    found.push(`${path}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${what}`);
  };
  for (const statement of source.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    if (!(statement.declarationList.flags & ts.NodeFlags.Const)) say(statement, 'let at module level');
    for (const declaration of statement.declarationList.declarations)
      if (isEmptyContainer(declaration.initializer) && !/^readonly\b|^Readonly/.test(declaration.type?.getText() ?? ''))
        say(declaration, 'empty container at module level');
  }
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && CLOCKS_AND_CHANCE.test(node.getText())) say(node, node.getText());
    if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length)
      say(node, 'new Date()');
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};
