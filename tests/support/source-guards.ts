import ts from 'typescript'

/** One `import` or `export … from` of a source file. */
export interface Import {
  readonly from: string
  readonly specifier: string
  /** Only types are taken, so that nothing is left of it when the program runs. */
  readonly typesOnly: boolean
}

/** The imports of a TypeScript or Astro file, dynamic ones included. */
export function importsOf(path: string, text: string): Import[] {
  const found: Import[] = []
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ from: path, specifier: node.moduleSpecifier.text, typesOnly: takesOnlyTypes(node.importClause) })
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ from: path, specifier: node.moduleSpecifier.text, typesOnly: node.isTypeOnly })
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [specifier] = node.arguments
      if (specifier && ts.isStringLiteralLike(specifier)) found.push({ from: path, specifier: specifier.text, typesOnly: false })
    }
    ts.forEachChild(node, walk)
  }
  for (const script of scriptsOf(path, text)) walk(ts.createSourceFile(path, script, ts.ScriptTarget.Latest, true))
  return found
}

/** The TypeScript in a file: all of a .ts file; the head and the scripts of an .astro file. */
function scriptsOf(path: string, text: string): string[] {
  if (!path.endsWith('.astro')) return [text]
  const head = /^---\n([\s\S]*?)\n---/.exec(text)?.[1]
  return [...(head === undefined ? [] : [head]), ...[...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map((found) => found[1] ?? '')]
}

function takesOnlyTypes(clause: ts.ImportClause | undefined): boolean {
  if (!clause) return false
  if (clause.isTypeOnly) return true
  const { namedBindings } = clause
  return !clause.name && namedBindings !== undefined && ts.isNamedImports(namedBindings) && namedBindings.elements.length > 0
    && namedBindings.elements.every((element) => element.isTypeOnly)
}

/** What a folder may import: folder names of ours (`fabric (types)` for types only, `diagnostics/words.ts` for one file) and packages. */
export interface Allowed {
  readonly ours: readonly string[]
  readonly packages: readonly string[]
}

/** Imports that the map does not allow, in words. A folder that the map lacks may import nothing. */
export function forbiddenImports(imports: readonly Import[], map: Readonly<Record<string, Allowed>>): string[] {
  return imports.filter((one) => !isAllowed(one, map)).map(({ from, specifier }) => `${from} imports ${specifier}`)
}

function isAllowed({ from, specifier, typesOnly }: Import, map: Readonly<Record<string, Allowed>>): boolean {
  const folder = folderOf(from)
  const allowed = map[folder]
  if (!allowed) return false
  if (!specifier.startsWith('.')) return allowed.packages.some((name) => fits(name, specifier))
  const target = new URL(specifier, `file:///${from}`).pathname.slice(1)
  const targetFolder = folderOf(target)
  if (targetFolder === folder || allowed.ours.includes('anything')) return true
  return allowed.ours.some((entry) => entry === targetFolder || `src/${entry}` === target || (typesOnly && entry === `${targetFolder} (types)`))
}

/** `yaml` allows `yaml` and `yaml/util`; `node:*` allows every module of Node's. */
function fits(name: string, specifier: string): boolean {
  if (name === '*') return true
  return name.endsWith('*') ? specifier.startsWith(name.slice(0, -1)) : specifier === name || specifier.startsWith(`${name}/`)
}

/** `src/fabric/edges/step.ts` -> `fabric`; a file directly under `src/` stands for itself. */
export function folderOf(path: string): string {
  return /^src\/([^/]+)/.exec(path)?.[1] ?? path
}

/** Relative imports that do not name their file in full. */
export function shortenedImports(imports: readonly Import[]): string[] {
  return imports
    .filter(({ specifier }) => specifier.startsWith('.') && !/\.(ts|astro|css|json|md|mjs)(\?\w+)?$/.test(specifier))
    .map(({ from, specifier }) => `${from} imports ${specifier}`)
}

/** Places in a file, comments and texts aside, that reach for the clock, chance, the process, the console, the disk or the net. */
export function impureLines(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
  const found: string[] = []
  const walk = (node: ts.Node): void => {
    const what = reachesFor(node)
    if (what !== undefined) found.push(`${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1} uses ${what}`)
    ts.forEachChild(node, walk)
  }
  walk(file)
  return found
}

function reachesFor(node: ts.Node): string | undefined {
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) return 'a clock'
  if (ts.isStringLiteral(node) && node.text.startsWith('node:')) return 'the disk or the net'
  if (ts.isCallExpression(node) && node.expression.getText() === 'fetch') return 'the disk or the net'
  if (!ts.isPropertyAccessExpression(node) && !ts.isElementAccessExpression(node)) return undefined
  const owner = node.expression.getText().replace(/^globalThis\./, '')
  const taken = ts.isPropertyAccessExpression(node) ? node.name.text : node.argumentExpression.getText().slice(1, -1)
  if ((owner === 'Date' || owner === 'performance') && taken === 'now') return 'a clock'
  if (owner === 'Math' && taken === 'random') return 'chance'
  if (owner === 'process') return 'the process'
  return owner === 'console' ? 'the console' : undefined
}

/** Files with more lines than the limit, in words. */
export function longFiles(files: readonly { readonly path: string; readonly text: string }[], limit: number, exempt: readonly string[]): string[] {
  return files
    .map(({ path, text }) => ({ path, lines: text.trimEnd().split('\n').length }))
    .filter(({ path, lines }) => lines > limit && !exempt.includes(path))
    .map(({ path, lines }) => `${path} has ${lines} lines`)
}
