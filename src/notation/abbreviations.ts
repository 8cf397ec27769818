import type { Vocabulary } from './reader.ts'
import type { Token } from './tokens.ts'

/** Words that magazines shorten to save lines; none of a stitch. Common practice, no source. */
const spelled: Readonly<Record<string, string>> = {
  unwkd: 'unworked', unwrkd: 'unworked', wkg: 'working', wrkg: 'working', wk: 'work', wrk: 'work', wkd: 'worked', wrkd: 'worked', fdn: 'foundation', fnd: 'foundation', fndn: 'foundation', ctr: 'center', cntr: 'center', cnr: 'corner', cnrs: 'corners', crnr: 'corner', crnrs: 'corners',
  skd: 'skipped', skpd: 'skipped', opp: 'opposite', lwr: 'lower', upr: 'upper', btm: 'bottom', btw: 'between', betw: 'between', thru: 'through', sep: 'separate', jn: 'join', jng: 'joining', jnd: 'joined', lng: 'long', ea: 'each', rd: 'rnd', rds: 'rnds', mid: 'middle', shldr: 'shoulder', shldrs: 'shoulders', fr: 'from',
}

/** Shortened words as they are spelled out; not one that the pattern calls a stitch by, or a piece. `5x` behind a bracket is five times. */
export function spelledOut(all: readonly Token[], { stitchAt, pieces, letters }: Vocabulary): readonly Token[] {
  const names = pieces.map((name) => name.toLowerCase().split(/\s+/))
  return rowsRepeated(all.map((token, at) => {
    const word = token.text.toLowerCase().replace(/['’]/g, '')
    if (letters !== true && word === 'x' && all[at - 1]?.kind === 'number' && /^[)\]]$/.test(all[at - 2]?.text ?? '')) return { ...token, text: 'times' }
    const full = token.kind === 'word' ? spelled[word] : undefined
    return full === undefined || stitchAt([word]) !== undefined || names.some((name) => name.includes(word)) ? token : { ...token, text: full }
  }))
}

/** `Rep [Rows 3 & 4] 5 times`: as without the brackets. */
function rowsRepeated(all: readonly Token[]): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const opens = all.findIndex((_, at) => /^[[(]$/.test(word(at)) && /^rep(?:eat)?$/.test(word(at - 1)) && /^(?:rows?|rnds?|rounds?)$/.test(word(at + 1)))
  const closes = all.findIndex((_, at) => at > opens && /^[\])]$/.test(word(at)))
  return opens < 0 || closes < 0 ? all : all.filter((_, at) => at !== opens && at !== closes)
}
