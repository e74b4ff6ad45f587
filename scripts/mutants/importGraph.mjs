import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';

/**
 * What imports what below `root`, as running code does: types are left out. A name taken from a table of contents (a file of nothing but
 * `export … from`) leads to the file that holds it, not to all that the table lists.
 * Paths are relative to `root`.
 */
export function importGraph(root) {
  const read = new Map();

  /** The steps from `file` to all that it runs, itself with 0. */
  function stepsFrom(file) {
    const steps = new Map([[file, 0]]);
    for (const [at, step] of steps)
      for (const next of neighborsOf(at)) if (!steps.has(next)) steps.set(next, step + 1);
    return steps;
  }

  function neighborsOf(file) {
    const found = new Set();
    for (const { target, names } of parsed(file).taken)
      if (names === 'all' || !parsed(target).isTable) found.add(target);
      else for (const name of names) found.add(holderOf(target, name) ?? target);
    return found;
  }

  /** The file that holds `name`; undefined where that is not found: then all that the table lists is taken for it. */
  function holderOf(file, name) {
    const { isTable, listed, starred, declared } = parsed(file);
    if (!isTable) return declared.has(name) ? file : undefined;
    const entry = listed.get(name);
    if (entry !== undefined) return holderOf(entry.target, entry.name) ?? entry.target;
    for (const target of starred) {
      const holder = holderOf(target, name);
      if (holder !== undefined) return holder;
    }
    return undefined;
  }

  function parsed(file) {
    const known = read.get(file);
    if (known !== undefined) return known;
    const one = parse(file);
    read.set(file, one);
    return one;
  }

  function parse(file) {
    const text = readFileSync(join(root, file), 'utf8');
    const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
    const one = { isTable: true, taken: [], listed: new Map(), starred: [], declared: new Set() };
    const seen = new Set();
    for (const statement of source.statements) {
      const from = statement.moduleSpecifier?.text;
      if (from === undefined || !ts.isExportDeclaration(statement)) one.isTable = false;
      if (from === undefined) declaredBy(statement, one.declared);
      else {
        seen.add(from);
        const target = resolved(file, from);
        if (target !== undefined) takeFrom(statement, target, one);
      }
    }
    for (const { fileName } of ts.preProcessFile(text, true, true).importedFiles) {
      const target = seen.has(fileName) ? undefined : resolved(file, fileName);
      if (target !== undefined) one.taken.push({ target, names: 'all' });
    }
    return one;
  }

  function resolved(file, from) {
    if (!from.startsWith('.')) return undefined;
    const base = normalize(join(dirname(file), from));
    return [base, `${base}.ts`, `${base}.tsx`, base.replace(/\.js$/, '.ts'), join(base, 'index.ts')].find(
      (path) => /\.tsx?$/.test(path) && existsSync(join(root, path)),
    );
  }

  return { stepsFrom };
}

function takeFrom(statement, target, one) {
  if (ts.isExportDeclaration(statement)) {
    if (statement.isTypeOnly) return;
    one.taken.push({ target, names: 'all' });
    if (statement.exportClause === undefined) one.starred.push(target);
    else if (ts.isNamedExports(statement.exportClause))
      for (const { name, propertyName } of statement.exportClause.elements)
        one.listed.set(name.text, { target, name: (propertyName ?? name).text });
    return;
  }
  const clause = statement.importClause;
  if (clause?.isTypeOnly) return;
  const named = clause?.namedBindings;
  if (clause?.name !== undefined || named === undefined || ts.isNamespaceImport(named))
    one.taken.push({ target, names: 'all' });
  else
    one.taken.push({
      target,
      names: named.elements
        .filter(({ isTypeOnly }) => !isTypeOnly)
        .map(({ name, propertyName }) => (propertyName ?? name).text),
    });
}

function declaredBy(statement, declared) {
  if (statement.name !== undefined) declared.add(statement.name.text);
  for (const { name } of statement.declarationList?.declarations ?? []) declared.add(name.text);
  for (const { name } of statement.exportClause?.elements ?? []) declared.add(name.text);
}
