import type { Code, Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'

/** Names of `npm run` scripts that a document tells its reader to type and that are no scripts. */
export function absentCommands(markdown: string, scripts: readonly string[]): string[] {
  const named: string[] = []
  visit(unified().use(remarkParse).parse(markdown), (node) => {
    if (node.type !== 'code' && node.type !== 'inlineCode') return
    for (const [, run, short] of node.value.matchAll(/\bnpm (?:run (?:--?[\w-]+ )*([\w:-]+)|(test|start)\b)/g)) named.push(run ?? short ?? '')
  })
  return [...new Set(named)].filter((name) => !scripts.includes(name))
}

/** `ts` fences whose code does not stand in the file that their first comment names. Gives the files' names. */
export function absentFences(markdown: string, read: (path: string) => string | undefined): string[] {
  return fences(markdown, ({ lang }) => lang === 'ts').flatMap(({ value }) => {
    const [head = '', ...rest] = value.split('\n')
    const path = /^\/\/ ((?:src|tests)\/\S+)$/.exec(head)?.[1]
    if (path === undefined) return [`a ts fence names no file: ${head}`]
    return (read(path) ?? '').includes(rest.join('\n').trimEnd()) && rest.length > 0 && read(path) !== undefined ? [] : [path]
  })
}

/** Paths in a document's trees (fences headed `text tree`) that do not exist. */
export function absentPaths(markdown: string, exists: (path: string) => boolean): string[] {
  return treePaths(markdown).filter((path) => !exists(path))
}

/** Folders directly under `src/` that no tree of the document names. */
export function foldersNotNamed(markdown: string, folders: readonly string[]): string[] {
  const named = treePaths(markdown)
  return folders.filter((folder) => !named.includes(`src/${folder}/`))
}

/**
 * Paths of a tree. Two spaces of indentation are one folder deeper; names stand first on a line, words about them after:
 *
 *   src/
 *     text/          a source and the places in it
 *       source.ts  span.ts
 */
function treePaths(markdown: string): string[] {
  const paths: string[] = []
  for (const { value } of fences(markdown, ({ lang, meta }) => lang === 'text' && meta === 'tree')) {
    const above: string[] = []
    for (const line of value.split('\n')) {
      const depth = Math.floor((/^ */.exec(line)?.[0].length ?? 0) / 2)
      above.length = Math.min(above.length, depth)
      for (const name of namesAtStart(line)) {
        paths.push(above.join('') + name)
        if (name.endsWith('/')) above[depth] = name
      }
    }
  }
  return paths
}

function namesAtStart(line: string): string[] {
  const words = line.trim().split(/\s+/)
  const end = words.findIndex((word) => !/^[\w.[\]-]*\/$|^\.?[\w[\]-]+(?:\.[\w-]+)+$|^[A-Z]+$/.test(word))
  return end === -1 ? words : words.slice(0, end)
}

function fences(markdown: string, wanted: (node: Code) => boolean): Code[] {
  const found: Code[] = []
  visit(unified().use(remarkParse).parse(markdown) as Root, 'code', (node) => {
    if (wanted(node)) found.push(node)
  })
  return found
}
