import { readFileSync } from 'node:fs'

/** A pattern that is right, and changes of a few of its characters that make it wrong. */
export interface EdgeCase {
  readonly name: string
  /** Front-matter without title. */
  readonly pattern: string
  readonly planted: readonly { readonly from: string; readonly to: string }[]
}

/** Cases of a page: a heading, a `yaml` fence, and a list of lines `- from → to`, where `⏎` stands for the start of the next row. */
export function readEdgePage(path: string): readonly EdgeCase[] {
  return readFileSync(path, 'utf8').split(/^## /m).slice(1).map((section) => {
    const name = section.slice(0, section.indexOf('\n'))
    const pattern = /^```yaml\n([\s\S]*?)\n```$/m.exec(section)?.[1]
    if (pattern === undefined) throw new Error(`${path}: "${name}" has no pattern`)
    const planted = [...section.matchAll(/^- (.+) → (.+)$/gm)].map(([, from, to]) => ({ from: broken(from!), to: broken(to!) }))
    return { name, pattern, planted }
  })
}

const broken = (text: string): string => text.replaceAll(' ⏎ ', '\n      ')
