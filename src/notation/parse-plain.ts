import { parseOneLayer } from './one-layer.ts'
import { takeEndLead, takeEndTail } from './at-row-end.ts'
import { ordinals } from './number-words.ts'
import { skipNth } from './parse-nth.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { countsLater, takeCountsAs, takeToldApart } from './parse-counts-as.ts'
import { parseBehind } from './parse-behind.ts'
import { takeHeldTail } from './parse-held.ts'
import { takeLoop } from './parse-loop.ts'
import { edgeAhead } from './parse-edge-ahead.ts'
import { takeRing } from './parse-ring.ts'
import { inPlace } from './parse-in-place.ts'
import { parsePartStart } from './parse-part.ts'
import { parsePicot } from './parse-picot.ts'
import { toldSeparateChain } from './told-separate-chain.ts'
import { parseTie } from './parse-tie.ts'
import { parseJoin } from './parse-join.ts'
import { parseLeave } from './parse-leave.ts'
import { parseLayers } from './parse-layers.ts'
import { otherSide } from './parse-other-side.ts'
import { parseTurn } from './parse-turn.ts'
import { parseSkip } from './parse-skip.ts'
import { spacesCounted } from './parse-again.ts'
import { takeTarget } from './parse-target.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Chain, Instruction } from './syntax.ts'
import type { Num } from './target.ts'
import { toSeparator } from './to-separator.ts'

/** Chains, skips, turns, joins and what is left: the instructions that are no stitches. */
export function parsePlain(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  return definition(reader) ?? parseTurn(reader, before) ?? inLoopsOf(reader) ?? parsePartStart(reader) ?? returnTo(reader) ?? chartRows(reader) ?? parseLayers(reader) ?? parseOneLayer(reader) ?? otherSide(reader) ?? edgeAhead(reader) ?? ringStart(reader) ?? startingIn(reader, before) ?? toldSeparateChain(reader) ?? parseTie(reader, before) ?? parsePicot(reader, before) ?? chain(reader, before) ?? skipNth(reader, before) ?? parseSkip(reader) ?? parseLeave(reader) ?? parseJoin(reader, before) ?? parseBehind(reader, before) ?? inPlace(reader, before)
}

/** `inc = 2 sc in the same st.`: what a word stands for anyway. */
function definition(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const by = reader.take('inc|increase|dec|decrease') && reader.take('=|means|is|:') && (reader.take('work?', '2|two') && reader.take('sc|hdc|dc|tr|htr|st|sts|stitches') && reader.take('in|into', 'the?', 'same|next|one|each', 'st|stitch|place?') || /^(sc|hdc|dc|tr|htr)2tog$/.test(reader.word()) && reader.take(reader.word()))
  if (by && (reader.done || /^[,;.)]$/.test(reader.word()))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `Working in free front loops of Rnd 2,`: what follows goes into loops that an older row left. */
function inLoopsOf(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  reader.take('now')
  reader.take('work|working')
  if (reader.take('in|into|along', 'the?', 'free|unused|unworked|remaining|rem?')) {
    const free = /^(free|unused|unworked|remaining|rem)$/.test(reader.word(-1))
    const draft: { loop?: 'back' | 'front' | 'third' } = {}
    takeLoop(reader, draft)
    const loops = draft.loop !== undefined || free && reader.take('loop|loops|lp|lps')
    const ofRow = loops ? takeRowNamed(reader, 'of|from') : undefined
    if (ofRow !== undefined && (reader.done || /^[,;:.]$/.test(reader.word()))) {
      return [{ node: 'start', target: { walk: 'next', ofRow, loop: draft.loop ?? 'free', thing: { kind: 'stitch' }, start, end: reader.end }, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}

/** `Return to unworked sts of Row 20`: the hook goes back to places that were left. */
function returnTo(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  if (!reader.take('return|returning', 'to') && !reader.take('go|going', 'back', 'to')) return undefined
  reader.take('the|held?', 'held?')
  takeNumber(reader)
  reader.take('rem|remaining|unworked|held|skipped')
  takeThing(reader)
  const held = takeHeldTail(reader)
  if (held && /held|sleeve|thumb/.test(held.words)) return [{ node: 'start', target: { walk: 'skipped', held: held.words, ...(held.ofRow !== undefined && { ofRow: held.ofRow }), start, end: reader.end }, start, end: reader.end }]
  if (held?.ofRow === undefined) reader.take('left|unworked', 'unworked?')
  const ofRow = held?.ofRow ?? takeRowNamed(reader, 'of|on|from|in')
  if (ofRow !== undefined) {
    return [{ node: 'start', target: { walk: 'next', ofRow, thing: { kind: 'stitch' }, start, end: reader.end }, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `Work Row 1 of Chart A over next 24 sts`: the chart has its own counts; here so many stitches are worked on. */
function chartRows(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  reader.take('work|working')
  if (reader.take('row|rows|rnd|rnds')) {
    while (!reader.done && !/^(over|across|,|;)$/.test(reader.word()) && reader.at - at < 12) reader.at += 1
    const chart = reader.all.slice(at, reader.at).some(({ text }) => /^chart$/i.test(text))
    if (chart && reader.take('over|across', 'the?', 'next')) {
      const count = takeNumber(reader)
      reader.take('st|sts|stitches')
      if (count) return [{ node: 'work', stitch: 'sc', target: { walk: 'next', count, start, end: reader.end }, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}

/** `Magic ring, 9 sc in ring`, `Make a magic circle, ch 1, …`, `In a magic ring, ch 2, 10 dc`. */
function ringStart(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  reader.take('in|into|with|form|begin|start|to?', 'with?')
  const magic = /^(a|an|magic|adjustable|mr|ring)$/.test(reader.word())
  if (!magic || !takeRing(reader) || !reader.done && !/^([,.:;]|work|make)$/.test(reader.word())) {
    reader.at = at
    return undefined
  }
  return [{ node: 'start', target: { walk: 'ring', start, end: reader.end }, start, end: reader.end }]
}

function chain(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  // `in each dc and ch around`: the chain is a place, and no instruction.
  const last = before.at(-1)
  if (reader.word(-1) === 'and' && last?.node === 'work' && last.target?.walk === 'each' && /^(around|across)$/.test(reader.word(1))) return undefined
  // `in each of the 9 dc and 2 ch-1 sps`: those are places too.
  if (reader.word(-1) === 'and' && spacesCounted(reader, last)) return undefined
  if (takeToldApart(reader)) return [{ node: 'aside', start, end: reader.end }]
  takeEndLead(reader)
  const { at: named } = reader
  // `a foundation chain of 21`, `cast on 21 ch`
  if (reader.take('a?', 'foundation|starting|beginning|turning|initial|base?', 'ch|chain', 'of')) reader.at -= 2
  else {
    reader.at = named
    reader.take('cast', 'on')
  }
  const first = numberAhead(reader) !== undefined && !reader.vocabulary.stitchAt([reader.word(1)]) ? takeNumber(reader) : undefined
  // `16 more ch`
  if (first) reader.take('more|further|extra|additional')
  if (!reader.take('ch|chs|chain|chains') || reader.word() === '-' && numberAhead(reader, 1) === undefined) {
    reader.at = at
    return undefined
  }
  if (!first && /^(sp|sps|lp|lps|space)$/.test(reader.word())) {
    reader.at = at
    return undefined
  }
  reader.take('-')
  if (numberAhead(reader, 1) !== undefined) reader.take('of')
  const count = first ?? takeNumber(reader) ?? { values: [1], start: reader.end, end: reader.end }
  if (/^(sp|sps|lp|lps|space|spaces|loop)$/.test(reader.word())) {
    reader.at = at
    return undefined
  }
  // `21 chain stitches`, `a chain of 21 sts`, `a chain 21 stitches long`
  if (reader.all[at]?.kind !== 'word' || begins(before)) reader.take('sts|stitches|ch|chains', 'long?')
  if (!reader.take('loosely|tightly')) reader.take('more|extra|further')
  reader.take('once', 'more|again') || reader.take('as', 'before') || reader.take('again|anew|afresh')
  reader.take('instead')
  // `ch 4 at end of row`
  takeEndTail(reader)
  reader.take('for', 'turning|beg|foundation', 'ch?') || reader.take('to', 'begin|start', 'each|every|the|this', 'row')
  if (reader.take('to', 'close|complete|finish|lock|secure')) {
    // The chain that closes a cluster belongs to it and is no space.
    reader.take('the?', 'cl|cluster|st|popcorn|puff')
    return [{ node: 'aside', start, end: reader.end }]
  }
  if (reader.take('joined') || reader.take(',?', 'to?', 'measure|measuring')) toSeparator(reader)
  const counts = chainCounts(reader, begins(before), count)
  const between = reader.take('between')
  if (between) toSeparator(reader)
  return [{ node: 'chain', count, ...counts, ...(between && { between }), start, end: reader.end }]
}

/** Whether no stitch stands before. */
function begins(before: readonly Instruction[]): boolean {
  return !before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat' || node === 'chain' || node === 'skip')
}

function chainCounts(reader: Reader, first: boolean, count: Num): Pick<Chain, 'counts' | 'notCounted'> {
  const counts = takeCountsAs(reader) ?? (first ? countsLater(reader, count) : undefined)
  if (!counts) return {}
  return counts.stitch === undefined && !counts.chains ? { notCounted: true } : { counts }
}

/** `Starting in 2nd ch from hook,`, `beginning with 2nd ch from hook,`: the chains before it are skipped. `Sc in each of 36 dc around, beginning in same st as closing sl st,`: where the stitches before it begin. */
function startingIn(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  const nothingYet = !before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  if (reader.take(nothingYet ? 'start|starting|beg|begin|beginning|commencing' : 'starting|beg|beginning|commencing', 'in|into|with|at|from|on')) {
    const { at: where } = reader
    if (placeOfJoin(reader)) return [{ node: 'aside', start, end: reader.end }]
    reader.at = where
    // `starting in 2nd ch,`, `beginning with the 3rd st,`
    const nth = nothingYet && reader.take('the?') ? reader.peek() : undefined
    const value = nth?.kind === 'ordinal' ? nth.value : ordinals[reader.word()]
    if (nth && value !== undefined && value > 1 && (/^(ch|chain|st|stitch)$/.test(reader.word(1)) || reader.vocabulary.stitchAt([reader.word(1)])) && /^(?:[,:]|work|)$/.test(reader.word(2))) {
      reader.at += 2
      const chain = /^ch/.test(reader.word(-1))
      return [{ node: 'skip', count: { values: [value - 1], start, end: reader.end }, ...(chain && { thing: { kind: 'chain' as const } }), from: 'first', start, end: reader.end }]
    }
    reader.at = where
    const target = takeTarget(reader, false)
    if (nothingYet && target?.walk === 'from-hook' && target.count) {
      const count = { ...target.count, values: target.count.values.map((nth) => Math.max(0, nth - 1)) }
      return [{ node: 'skip', count, thing: { kind: 'chain' }, from: 'first', start, end: reader.end }]
    }
    // `sc 5, beginning in 2nd ch from hook`
    const worked = before.at(-1)
    if (worked?.node === 'work' && worked.count && !worked.target && target?.walk === 'from-hook' && target.count) return [{ node: 'skip', count: { ...target.count, values: target.count.values.map((nth) => Math.max(0, nth - 1)) }, thing: { kind: 'chain' }, from: 'first', start, end: reader.end }]
    // `starting in first skipped sc,`
    if (nothingYet && target?.walk === 'skipped' && placeEnds(reader)) return [{ node: 'start', target, start, end: reader.end }]
    // `starting at the left end of Row 12,`
    if (nothingYet && target?.walk === 'edge' && target.ofRow !== undefined) return [{ node: 'start', target, start, end: reader.end }]
    // `starting in same st as join,`, `beg in next sc,`: where the row begins, or goes on, anyway.
    if (target?.walk === 'same' || (target?.walk === 'first' || target?.walk === 'next' && !nothingYet) && !target.count && target.thing?.kind !== 'space') return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `the st of the join`, `the joining sl st`, `the dc with the ss`, `the same place where you joined`: where a joined round begins anyway. */
function placeOfJoin(reader: Reader): boolean {
  const { at } = reader
  reader.take('the?', 'same|very?')
  const named = reader.take('that|joining|joined|closing')
  const place = reader.take('place|spot') || takeThing(reader)?.kind === 'stitch'
  if (place && named && placeEnds(reader)) return true
  const { at: link } = reader
  if (place && reader.take('where|that|which|with|in|of|holding|having|carrying|at|as|into|used|the|you')) {
    toSeparator(reader)
    const told = reader.all.slice(link, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
    if (/\b(?:(?:re)?join(?:ed|ing)?|(?:re)?attach(?:ed|ing)?|s(?:lip|l)[ -]?st(?:itch)?|ss)\b/.test(told)) return true
  }
  reader.at = at
  return false
}
