import { posix } from 'node:path';
import ts from 'typescript';
import { code, type SourceFile } from './sourceFiles.ts';

export interface Import {
  readonly from: string;
  /** path from the project's top, or the package's name */
  readonly target: string;
  readonly external: boolean;
  readonly typeOnly: boolean;
}

const packageName = (specifier: string): string => {
  if (specifier.startsWith('node:')) return 'node:';
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
};

const isTypeOnly = (node: ts.ImportDeclaration | ts.ExportDeclaration): boolean => {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (!clause) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = clause.namedBindings;
  return (
    !clause.name && named !== undefined && ts.isNamedImports(named) && named.elements.every((one) => one.isTypeOnly)
  );
};

/** Every import, re-export, dynamic import and worker address of one file. */
export const readImports = (file: SourceFile): Import[] => {
  const found: Import[] = [];
  const add = (specifier: string, typeOnly: boolean): void => {
    const external = !specifier.startsWith('.');
    const target = external
      ? packageName(specifier)
      : posix.normalize(posix.join(posix.dirname(file.path), specifier.split('?')[0] ?? ''));
    found.push({ from: file.path, target, external, typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier)
      add((node.moduleSpecifier as ts.StringLiteral).text, isTypeOnly(node));
    const first = ts.isCallExpression(node) || ts.isNewExpression(node) ? node.arguments?.[0] : undefined;
    if (first && ts.isStringLiteral(first)) {
      if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) add(first.text, false);
      if (ts.isNewExpression(node) && node.expression.getText() === 'URL' && first.text.startsWith('.'))
        add(first.text, false);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file.path, code(file), ts.ScriptTarget.Latest, true, ts.ScriptKind.TS));
  return found;
};
