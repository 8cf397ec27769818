import { parseRow } from './parse-row.ts'
import type { Vocabulary } from './reader.ts'
import { makesSeparateChain } from './separate-chain.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

/** Where a remark joins the yarn for the row under it. */
export interface Opening {
  readonly items: readonly Instruction[]
  readonly sizeLists: readonly Num[]
}

const sentence = /[^.!]+(?:\.(?!\s|$)[^.!]+)*/g
const prefix = /^notes?\s*:/i
const chainNamed = /^\s*(?:spare|separate) ch(?:ain)?\s*:/i
const places = new Set<Instruction['node']>(['skip', 'start', 'aside', 'turn'])

/**
 * `Note: With RS facing, skip next 11 sts and join yarn in the following st.`: the row under it begins there. Of the other sentences, and of
 * one that cannot be read whole as far as the place, nothing is taken.
 */
export function parseJoinNote(text: string, start: number, end: number, vocabulary: Vocabulary): Opening | undefined {
  const from = start + (prefix.exec(text.slice(start, end))?.[0].length ?? 0)
  for (const { 0: words, index } of text.slice(from, end).matchAll(sentence)) {
    if (!/\b(?:re)?(?:join|attach)/i.test(words)) continue
    const { items, reference, sizeLists } = parseRow(text, from + index + (chainNamed.exec(words)?.[0].length ?? 0), from + index + words.length, vocabulary)
    const last = items.findLastIndex(({ node }) => node === 'start')
    const taken = items.slice(0, last + 1)
    if (!reference && makesSeparateChain(items)) return { items, sizeLists }
    if (taken.some(isPlace) && !reference && taken.every(({ node }) => places.has(node)) && !items.some(worksAny)) return { items: taken, sizeLists }
  }
  return undefined
}

/** So many stitches on, a space by its chains, or a place that is told by its row or its edge. `At the corner`, `at the lower edge` leave it to the row. */
function isPlace(item: Instruction): boolean {
  if (item.node !== 'start') return item.node === 'skip'
  const { ofRow, edge, held, thing } = item.target
  return thing?.kind === 'space' && thing.chains !== undefined || ofRow !== undefined || held !== undefined || edge === 'underside'
}

/** A remark that works stitches is a row of its own kind, and not where one begins. */
const worksAny = ({ node }: Instruction): boolean => node === 'work' || node === 'group' || node === 'repeat' || node === 'chain'
