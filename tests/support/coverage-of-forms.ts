import { basename } from 'node:path'
import { readCases, type SpecCase } from './read-cases.ts'

/** A page of the spec about a group of forms: `forms-a.md`. */
export interface SpecPage {
  readonly path: string
  readonly text: string
}

const header = '| Group | Forms | Cases | Come out | With a slip | Told as not counted |'

/** The table of what the row language covers, a line for each group of forms, read from the headings and carets of the spec pages. */
export function coverageTable(pages: readonly SpecPage[]): string {
  const groups = pages.map(groupOf)
  const sum = (of: (group: Group) => number): number => groups.reduce((all, group) => all + of(group), 0)
  const lines = groups.map((group) => line([`${group.letter}: ${group.title}`, group.range, `${group.cases}`, `${group.clean}`, `${group.slips}`, group.told.join('; ') || '–']))
  const total = line(['All', `${sum(({ forms }) => forms)}`, `${sum(({ cases }) => cases)}`, `${sum(({ clean }) => clean)}`, `${sum(({ slips }) => slips)}`, `${sum(({ told }) => told.length)} forms`])
  return [header, '| --- | --- | --- | --- | --- | --- |', ...lines, total].join('\n')
}

function line(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`
}

interface Group {
  readonly letter: string
  readonly title: string
  readonly range: string
  readonly forms: number
  readonly cases: number
  readonly clean: number
  readonly slips: number
  /** Forms that are kept as text and told: the number, and the heading of its first case. */
  readonly told: readonly string[]
}

function groupOf({ path, text }: SpecPage): Group {
  const letter = /^forms-([a-z])\.md$/.exec(basename(path))?.[1]?.toUpperCase()
  const title = /^# (?:Group [A-Z]: )?(.+)$/m.exec(text)?.[1]
  const cases = readCases(text, path).flatMap((one) => {
    const found = /^Forms? (\d+)(?: to (\d+))?(?: again)?\W* (.+)$/.exec(one.name)
    return found ? [{ first: Number(found[1]), last: Number(found[2] ?? found[1]), about: found[3]!, outcome: outcomeOf(one) }] : []
  })
  if (!letter || !title || cases.length === 0) throw new Error(`${path}: a page of forms has a title, and headings \`Form 27: …\``)
  const numbers = cases.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, step) => first + step))
  const forms = [...new Set(numbers)].sort((a, b) => a - b)
  const told = forms.flatMap((form) => {
    const one = cases.find(({ first, outcome }) => first === form && outcome === 'told')
    return one ? [`${form} ${one.about}`] : []
  })
  const count = (outcome: Outcome): number => cases.filter((one) => one.outcome === outcome).length
  return {
    letter, title: title[0]!.toLowerCase() + title.slice(1), range: `${forms[0]} to ${forms.at(-1)}`, forms: forms.length,
    cases: cases.length, clean: count('clean'), slips: count('slip'), told,
  }
}

type Outcome = 'clean' | 'slip' | 'told'

/** A case comes out, has a slip that is found, or holds what nobody can count and is told so. */
function outcomeOf(one: SpecCase): Outcome {
  if (one.kind === 'single-rows' || one.expected.length === 0) return 'clean'
  return one.expected.every(({ code }) => code === 'row-not-checked') ? 'told' : 'slip'
}
