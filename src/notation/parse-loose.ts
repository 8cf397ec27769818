import { takeHowItLies } from './how-it-lies.ts'
import { numberAhead } from './numbers.ts'
import { layersAhead } from './parse-layers.ts'
import { takeToEnd } from './parse-reach.ts'
import { parseFacing } from './parse-facing.ts'
import { leadsToLoop, takeLoop, takeLoopLead } from './parse-loop.ts'
import { takeCountsAs } from './parse-counts-as.ts'
import { isQuiet, takeRemark } from './parse-remark.ts'
import { parseItems } from './parse-items.ts'
import { takeOverPart } from './parse-thither.ts'
import { takeSaying } from './parse-saying.ts'
import { takeWayAlong } from './parse-way.ts'
import { parseSewn } from './sewn.ts'
import { parseThreaded, threadedAhead } from './threaded.ts'
import { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** Openings of phrases that change no count. Each takes the words up to the next comma, full stop or bracket. */
const asides: readonly (readonly string[])[] = [
  ['with|working|making|putting|placing', 'the?', 'first', 'one|sc|dc|hdc|htr|tr|st|stitch', 'in|into|going|worked|falling', 'in|into?', 'the?', 'same|joining|joined'],
  ['with', 'the', 'last|final', 'one|sc|dc|hdc|htr|tr|st|stitch', 'in|into|going|worked|falling|landing'],
  ['do?', 'not?', 'fo'], ['do', 'not', 'inc|increase|dec|decrease'], ['do', 'not', 'ch|chain'], ['do', 'not', 'work|make', 'a|an|any', 'corner?', 'inc|increase|increases|corner'], ['flatten|fold|press|pinch|squash|lay'], ['to', 'make|form|be', 'a|the', 'hanging|button|small?', 'loop'], ['hanging|button', 'loop'], ['for', 'hanging|button', 'loop'], ['working|work', 'through', 'the?', 'last|first|foundation|beginning|starting'], ['upside', 'down'], ['working?', 'downward|downwards|upward|upwards|inward|inwards|outward|outwards'], ['pivot|pivoting'],
  ['fasten', 'off'], ['finish', 'off'], ['cut'], ['break'], ['weave'], ['change'], ['changing'], ['switch'], ['using'], ['with'], ['drop'], ['carry'],
  ['pick', 'up', 'a|b|c|d|e|f'], ['pick', 'up', 'the', 'waiting|live|held|resting|marked|dropped?', 'loop|loops|yarn'], ['pick', 'up', 'dropped|held|waiting|live', 'loop|loops'], ['return|replace|insert|put|place|remove|take|slip', 'the?', 'hook', 'back?', 'to|in|into|on|from|out', 'of?', 'the?', 'dropped|live|working|waiting|held?', 'loop|lp'], ['go|return|come', 'back?', 'to', 'the?', 'working|main|live|waiting|dropped|held', 'loop|yarn|thread'], ['pm'], ['place'], ['move'], ['moving'], ['sm'], ['rm'], ['remove'], ['slip', 'marker'], ['sl', 'm'], ['stuff'], ['begin'], ['beg', 'at'], ['commence'], ['start'],
  ['insert'], ['do', 'not', 'join|fasten|cut|tighten|stuff|stretch'], ['note'], ['see'], ['mark'], ['marking'], ['continue|continuing|carry|going', 'on?', 'in', 'the', 'same', 'direction'], ['do', 'not', 'continue|go|work', 'on?', 'along|down|up|around', 'the?', 'sides|side|row', '-?', 'ends?'], ['continue', 'in|with|as'], ['being|taking|bringing|matching|lining'], ['pull'], ['draw'],
  ['attach'], ['closing|forming|making', 'the|a|an|any|all', 'neck|thumb|front|back?', 'slit|slot|opening|neck|neckline|armhole|thumbhole|hole|holes|gap|gaps|keyhole'], ['right|wrong', 'side|sides'], ['rs|ws'], ['keeping'], ['corner', 'made'], ['made'], ['shell', 'made'], ['first|second|third|last|next', 'tile|block|shell|corner|picot|petal', 'made'], ['picot', 'made'], ['as', 'before'], ['beg|beginning', 'of'],
  ['this'], ['the', 'first'], ['here'], ['the?', 'hook|yarn', 'is|stands|lies|ends|will|should'], ['first', 'rnd|round|row', 'made'], ['invisible', 'join'], ['the?', 'edging|border|trim|trimming', 'is|will|follows|comes'], ['as', 'the', 'yarn|thread|work', 'is'], ['to', 'form|make|complete|close', 'the|a?', 'last|first|final?', 'loop|lp|sp|space|arch|round|rnd'], ['end', 'of'], ['end', 'off'], ['tie'], ['turn'], ['bring'], ['working|work', 'the', 'first', 'st|stitch|sc|dc|tr|hdc|htr', 'of', 'this|each|every'], ['still'], ['the', 'very?', 'last|first', 'sl', 'st', 'lands|goes|falls|will|is'], ['the', 'last|final', 'one|sc|dc|hdc|tr|st|stitch|of?', 'in|into', 'the?', 'top', 'of'], ['the', 'last|first|final', 'sl?', 'one|st|stitch|ss|sc|dc|hdc|htr|tr', 'lands|goes|falls|comes|sits|will|should|is'], ['round', 'and', 'round'], ['we', 'are|will|shall|do'], ['rotate'], ['in|under|through|into', 'both', 'loops|lps'], ['both', 'loops|lps', 'only?'],
  ['where', 'the', 'round|rnd|row', 'began|begins|started|starts'], ['already', 'holding|carrying|containing'], ['the', 'two|both?', 'pieces|parts|halves|layers|sides|panels', 'together', 'with|by'], ['adjust'], ['tighten'], ['hold'], ['holding'], ['laying'], ['with?', 'the', 'last|final', 'one|of|going|falling|landing|being|worked'], ['for', 'the|a|left|right|first|second|each|front|back|thumb|sleeve|sleeves|body|neck|neckline|armhole|armholes'], ['take|grab|get|fetch'], ['put'], ['set', 'the'], ['they|these|both|which', 'two|backs|pieces|parts|halves|layers|edges?', 'lap|overlap|lapping|overlapping'], ['sew'], ['thread'], ['leave'], ['leaving'], ['to', 'turn'], ['count', 'the', 'st|sts|stitches'],
  ['when'], ['as', 'soon', 'as'], ['once', 'the|both|all|it|they|that|this|you|seamed|sewn|joined|closed|blocked|assembled'], ['after', 'sewing|seaming|joining|closing|blocking|assembling|assembly|seams'], ['after', 'the|both|all', 'side|back|front|shoulder|long|short?', 'seam|seams', 'is|are|has|have'], ['if'], ['make|making', 'sure|certain'], ['check|checking', 'that|the'], ['pin|baste|clip'], ['repeat', 'marker'], ['instead', 'of'], ['spiral'], ['in', 'a?', 'continuous?', 'spiral'], ['in', 'continuous', 'rounds|rnds'], ['rounds|rnds', 'are', 'not?', 'joined'], ['no', 'joins|joining|turning|turns|join|turn'], ['the?', 'piece|work|body', 'is', 'worked'], ['work|working', 'around|round?', 'both', 'sides', 'of'], ['around|round', 'both', 'sides', 'of'], ['in', 'rounds|rows|spirals'], ['work', 'in', 'rounds|rows|spiral|a|continuous'],
  ['without', 'a|any|the?', 'turning|beginning|starting', 'ch|chain'], ['without', 'increasing|decreasing|increases|decreases|shaping'], ['continuous'], ['the', 'skipped'], ['turning', 'ch'], ['and', 'turn'], ['so?', 'that'], ['ready'], ['remember'], ['you', 'should|will|have'], ['it'], ['colour|color'], ['yarn'], ['now', 'on'], ['wrap'], ['from', 'here|now'], ['always'], ['because'], ['match|matching|align|aligning|layer|layering|stack'], ['line|lining', 'up'], ['to', 'make|work|form|create|begin|shape', 'the|a|an?', 'first|second|third|next|last|other|one?', 'buttonhole|opening|slit|eyelet|gap'],
  ['try|trying', 'on|it|the'], ['surface'], ['along', 'row|rnd|round'], ['both', 'fronts|sides|pieces|halves'], ['working', 'both'], ['slide'], ['add', 'a?', 'bead|sequin'], ['return', 'pass'], ['work', 'return'], ['working', 'the?', 'last'], ['working', 'loosely|tightly|over|behind|from|in', 'rounds|rows|the|front|a?'], ['from', 'left|right'],
]

/** What no arithmetic decides; kept as text and reported. */
const undecidable: readonly (readonly string[])[] = [
  ['as', 'desired'], ['as', 'needed|required'], ['in', 'patt|pattern'], ['work|cont|continue|working|continuing', 'even?', 'in', 'patt|pattern'], ['about|approximately|approx'],
  ['work', 'about|approximately'], ['or?', 'to|until|for', 'the?', 'desired|required|wanted'], ['to', 'fit|taste'], ['more|further?', 'rows|rnds|rounds', 'to', 'taste|fit'],
  ['more|further?', 'rows|rnds|rounds', 'as', 'desired|needed|required|wanted'], ['embroider'], ['inc|dec|increase|decrease', 'evenly'], ['evenly'], ['incorporating'], ['as', 'set|established'], ['easing|ease'],
]
/** So many rows as come to a length: where the row's label numbers them, the label decides. */
const byMeasure: readonly string[] = ['until', 'the?', 'piece|work|it']

const undecided = 'no arithmetic decides these words'

/** Phrases that are not instructions about places, loops said for what follows, and what cannot be read. */
export function parseLoose(reader: Reader): readonly Instruction[] {
  const start = reader.start
  const byLength = ahead(reader, byMeasure)
  if (byLength || undecidable.some((words) => ahead(reader, words))) {
    toClauseEnd(reader)
    return [{ node: 'unreadable', why: 'cannot', reason: undecided, ...(byLength && { byLength }), start, end: reader.end }]
  }
  if (reader.take('slip', '-?', 'knot', 'on|onto?', 'the?', 'hook?') || atEndOfRows(reader)) return [{ node: 'aside', start, end: reader.end }]
  const facing = parseFacing(reader)
  if (facing) return [facing]
  const yarn = colourMark(reader)
  if (yarn !== undefined) return [{ node: 'aside', yarn, start, end: reader.end }]
  const told = parseThreaded(reader) ?? parseSewn(reader)
  if (told) return told
  if (takeWayAlong(reader) || takeHowItLies(reader) || takeOverPart(reader)) return [{ node: 'aside', start, end: reader.end }]
  for (const words of asides) {
    if (!reader.take(...words)) continue
    return aside(reader, words, start)
  }
  if (leadsToLoop.test(reader.word())) {
    const loop = looseLoop(reader)
    if (loop) return [{ node: 'aside', start, end: reader.end }]
  }
  if (takeToEnd(reader)) return [{ node: 'aside', start, end: reader.end }]
  if (takeCountsAs(reader) || takeRemark(reader) || takeSaying(reader)) return [{ node: 'aside', start, end: reader.end }]
  const token = reader.peek()
  const { at } = reader
  toClauseEnd(reader)
  // A bracket that closes nothing stands alone.
  if (reader.at === at) {
    reader.at += 1
    return [{ node: 'unreadable', why: 'broken', reason: token?.text ?? '', start, end: reader.end }]
  }
  // `working new sts into patt`: what the pattern does with them, no words here tell.
  const asInPattern = reader.all.slice(at, reader.at).some(({ text }) => /^(patt|pattern)$/i.test(text))
  return [asInPattern ? { node: 'unreadable', why: 'cannot', reason: undecided, start, end: reader.end } : { node: 'unreadable', why: isQuiet(reader, at, reader.at) ? 'quiet' : 'word', reason: token?.text ?? '', start, end: reader.end }]
}

/** `At end of Row 10, cut yarn and fasten off`: what is done after the last of several rows, as long as nothing is worked. */
function atEndOfRows(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('at|after|on|by', 'the?', 'end', 'of', 'the?', 'last|final?', 'row|rnd|round') || reader.take('after', 'the?', 'last|final?', 'row|rnd|round')) {
    if (numberAhead(reader) !== undefined) reader.at += 1
    const { at: then } = reader
    while (!reader.done && !/^[.;)\]]$/.test(reader.word())) reader.at += 1
    const said = parseItems(new Reader(reader.all.slice(then, reader.at), reader.vocabulary), () => false)
    if (said.length > 0 && said.every(({ node }) => node === 'aside')) return true
  }
  reader.at = at
  return false
}

function ahead(reader: Reader, words: readonly string[]): boolean {
  const at = reader.at
  const taken = reader.take(...words)
  reader.at = at
  return taken
}

/** `with A`, `change to B`: the letter of the yarn is kept. */
function aside(reader: Reader, words: readonly string[], start: number): readonly Instruction[] {
  let yarn: string | undefined
  const naming = /^(with|change|changing|using|switch|colour|color|yarn|attach|drop|cut|break|fasten|carry|pick)$/.test(words[0] ?? '')
  // `working last sc in top of tch` tells where a stitch of the row went that is counted already.
  const mayWork = naming || /^(begin|commence|start|now|working|bring|bringing|hold|holding|flatten\|fold\|press\|pinch\|squash\|lay|rotate)$/.test(words[0] ?? '') && words.at(-1) !== 'last'
  // `place 3 dc in next st`: whatever word stands before them, they are worked.
  const from = /^(count|mark|marking|pm|sm|rm|remove|move|if|when)$/.test(words[0] ?? '') || words.at(-1) === 'last' ? -1 : reader.at
  const ends = (): boolean => /^[,;.()[\]{}:*]$/.test(reader.word()) || words[0] === 'for' && thenJoins(reader) || threadedAhead(reader)
  while (!reader.done && !ends() && !((mayWork || reader.at === from) && (stitchesStart(reader) || layersAhead(reader))) && !(/^(ch|chain)$/.test(reader.word()) && (numberAhead(reader, 1) ?? (reader.word(1) === 'of' ? numberAhead(reader, 2) : undefined)) !== undefined) && !(mayWork && reader.peek()?.kind === 'number' && /^(ch|chs|chain|chains)$/.test(reader.word(1)))) {
    const text = reader.peek()?.text ?? ''
    if (naming && isYarn(reader, text)) yarn = text
    reader.at += 1
  }
  return [{ node: 'aside', ...(yarn !== undefined && { yarn }), start, end: reader.end }]
}

/** `for the centre back and rejoin yarn in next dc`: what it is for ends here. */
function thenJoins(reader: Reader): boolean {
  return /^(and|then)$/.test(reader.word()) && /^(?:re)?(?:join|attach)$/.test(reader.word(1))
}

/** `with B 13 sc`, `using A sc in next 4`: what is worked begins here. */
function stitchesStart(reader: Reader): boolean {
  const number = numberAhead(reader) === undefined ? 0 : 1
  const words = [0, 1, 2].map((ahead) => reader.word(number + ahead))
  const found = reader.vocabulary.stitchAt(words)
  if (found && /^(rem|remaining|remain|left|unworked|between|made)$/.test(reader.word(number + found.words))) return false
  return found !== undefined && (number === 1 || /^(in|into|across|around|each|through|\d+)$/.test(reader.word(found.words)))
}

function isYarn(reader: Reader, text: string): boolean {
  return reader.vocabulary.yarns.includes(text) || /^[A-Z]$/.test(text) && text !== 'I' || text === 'MC' || text === 'CC'
}

/** `A` or `(A)` before stitches, as in `A12 B3 A10`. */
function colourMark(reader: Reader): string | undefined {
  const text = reader.peek()?.text ?? ''
  if (!isYarn(reader, text) || !(numberAhead(reader, 1) !== undefined || /^[,.:;)\]]$/.test(reader.word(1)) || reader.peek(1) === undefined || reader.word(1) === 'sc')) return undefined
  reader.at += 1
  return text
}

/** `working in back loops only` on its own: the row reads it before; here it is passed over. */
function looseLoop(reader: Reader): boolean {
  const at = reader.at
  takeLoopLead(reader)
  reader.take('in|into|through')
  const draft: { loop?: 'back' | 'front' | 'third' } = {}
  takeLoop(reader, draft)
  if (!draft.loop) {
    reader.at = at
    return false
  }
  reader.take('throughout|only')
  takeToEnd(reader)
  return true
}

function toClauseEnd(reader: Reader): void {
  let depth = 0
  while (!reader.done) {
    const word = reader.word()
    if (depth === 0 && (/^[,;.)\]}]$/.test(word) || reader.depth > 0 && reader.peek()!.kind === 'mark')) break
    if (/^[([{]$/.test(word)) depth += 1
    if (/^[)\]}]$/.test(word)) depth -= 1
    reader.at += 1
  }
}
