import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/**
 * A question to the compiler: whether `file` still has sound types with `text` in the place of what it holds. Files that import it are not
 * looked at. Paths are relative to `root`.
 */
export function typesOf(root, files) {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files }, ts.sys, root);
  const changed = new Map();
  const service = ts.createLanguageService({
    getCompilationSettings: () => options,
    getCurrentDirectory: () => root,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    getScriptFileNames: () => files.map((file) => join(root, file)),
    getScriptVersion: (path) => String(changed.get(path)?.version ?? 0),
    getScriptSnapshot: (path) => {
      if (!ts.sys.fileExists(path)) return undefined;
      return ts.ScriptSnapshot.fromString(changed.get(path)?.text ?? readFileSync(path, 'utf8'));
    },
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    directoryExists: ts.sys.directoryExists,
    getDirectories: ts.sys.getDirectories,
  });
  let version = 0;
  const put = (path, text) => changed.set(path, { text, version: (version += 1) });

  return (file, text) => {
    const path = join(root, file);
    put(path, text);
    const isSound = [...service.getSyntacticDiagnostics(path), ...service.getSemanticDiagnostics(path)].every(
      ({ category }) => category !== ts.DiagnosticCategory.Error,
    );
    put(path, undefined);
    return isSound;
  };
}
