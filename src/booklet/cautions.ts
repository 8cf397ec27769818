import type { Notion, Pattern } from '../pattern/pattern.ts'
import type { InstructionLine, Part, PartLine } from './booklet.ts'
import { typeset } from './typeset.ts'

/** What the cautions are drawn from: what the thing is for, and what goes into it. */
interface Made {
  readonly for: Pattern['madeFor']
  readonly notions: readonly Notion[]
  readonly fibres: string
  readonly words: string
}

interface Caution {
  readonly holds: (made: Made) => boolean
  readonly says: string
  /** Words of the row or the remark at which the hazard enters, and what is said there. */
  readonly enters?: RegExp
  readonly beside?: string
}

const smallParts = /\b(?:eyes?|noses?|buttons?|beads?|bells?|pompoms?|snaps?|sequins?|studs?)\b/i
const filling = /\b(?:fibrefill|fiberfill|filling|stuffing|wadding|batting)\b/i
/** What puts filling in: the word in a list of materials says no more than that it is there. */
const fills = /\b(?:fill(?!ing\b)|stuff|pad)(?:ed|s)?\b|\b(?:filling|stuffing|fibrefill|fiberfill|wadding)\b/i
const cords = /\b(?:cords?|ribbons?|drawstrings?|ties|laces?|elastic)\b/i
const candles = /\b(?:candles?|tealights?|lamps?|bulbs?|lights?)\b/i
const melting = /\b(?:acrylic|nylon|polyamide|polyester)\b/i
const hanging = /\b(?:hang|hangs|hanging|becket|loop to hang)\b/i
const littleOnes = /\b(?:baby|babies|newborn|infant|toddler|child|children|kid|months?|mths?)\b/i

const needs = (pattern: RegExp) => ({ notions }: Made): boolean => notions.some(({ what }) => pattern.test(what))
const isFor = (...kinds: readonly Made['for'][]) => (made: Made): boolean => kinds.includes(made.for)
const both = (a: (made: Made) => boolean, b: (made: Made) => boolean) => (made: Made): boolean => a(made) && b(made)
const not = (a: (made: Made) => boolean) => (made: Made): boolean => !a(made)

/** In the order in which the hazards enter the work. Advice in the trade's words; no limit of any law is quoted. */
const cautions: readonly Caution[] = [
  {
    holds: both(isFor('toy', 'baby', 'pet'), needs(smallParts)),
    says: 'Eyes, buttons, beads and bells are small parts, and can come off and be swallowed, whatever the word “safety” on the packet promises. '
      + 'For a child under three, or for a pet, leave them out and embroider instead.',
    enters: smallParts,
    beside: 'Caution: small parts can be swallowed. For a child under three or a pet embroider instead.',
  },
  {
    holds: both(isFor('toy', 'baby', 'pet'), needs(filling)),
    says: 'Fill with new, clean, washable filling only: no rice, beans, pellets, magnets or wire. Work so firmly that no filling shows between the stitches.',
    enters: fills,
    beside: 'Caution: use clean, washable filling only, and let none of it show between the stitches.',
  },
  {
    holds: isFor('toy'),
    says: 'Sew every part on firmly, twice round, and bury the ends. Look the toy over often, and put it away once a seam opens or filling shows.',
  },
  {
    holds: both(isFor('toy'), needs(cords)),
    says: 'Keep cords, bows and ribbons short and sew them down; never hang a toy in a cot or a pram.',
    enters: cords,
    beside: 'Caution: keep cords short, and sew them down.',
  },
  {
    holds: isFor('toy'),
    says: 'A toy that is sold, or given away in trade, has to meet the toy rules of the country where that happens, often with tests, a mark and papers. '
      + 'Calling it a decoration does not change that.',
  },
  {
    holds: isFor('baby'),
    says: 'Take it out of the cot when the baby sleeps. In the first twelve months nothing soft belongs where a baby sleeps: no blanket, cushion or toy. '
      + 'Use it only while someone is awake and watching, and ask your midwife, health visitor or doctor for the advice of the day.',
  },
  {
    holds: isFor('baby'),
    says: 'Leave no long ends, loops or wide holes that small fingers and toes can catch in, and thread no ribbon through the edge.',
  },
  {
    holds: both(isFor('garment', 'baby'), needs(cords)),
    says: 'Cords, ties and drawstrings do not belong at the neck or hood of clothes for children. Use a button or a flap instead.',
    enters: cords,
    beside: 'Caution: no cord or tie at the neck or hood of clothes for children.',
  },
  {
    holds: both(isFor('garment'), both(not(needs(cords)), ({ words }) => littleOnes.test(words))),
    says: 'It has no ties or cords, on purpose. Please do not add any to a size for a child, and take it off a baby who is put down to sleep.',
  },
  {
    holds: isFor('pet'),
    says: 'Watch your pet with it. Loose yarn and chewed-off pieces can be swallowed and block the gut; put it away once it is damaged.',
  },
  {
    holds: isFor('kitchen'),
    says: 'For anything hot use yarn that is all cotton or all wool, and hold it double. Acrylic, nylon and polyester soften and melt. '
      + 'Try it with care first, and keep it away from flames and from a hob that is on.',
  },
  {
    holds: both(isFor('kitchen'), ({ fibres }) => melting.test(fibres)),
    says: 'The yarn listed here melts with heat: what you make of it is not for hot pans and dishes.',
  },
  {
    holds: needs(candles),
    says: 'Yarn burns. No candle, and no bulb that grows warm: use a cold LED light only.',
    enters: candles,
    beside: 'Caution: yarn burns. Use a cold LED light only.',
  },
  {
    holds: both(isFor('home'), needs(filling)),
    says: 'This is made for the home. It is no toy, and like every soft thing it does not belong in a cot or anywhere a baby sleeps.',
    enters: fills,
    beside: 'Caution: once it is filled it is no toy, and not for a cot.',
  },
  {
    holds: both(isFor('home'), ({ words }) => hanging.test(words)),
    says: 'Hang it where children and pets cannot reach it or its loop. The loop is made to carry this piece alone.',
    enters: hanging,
    beside: 'Caution: hang it where children and pets cannot reach its loop.',
  },
]

const deferring = 'This is general advice and no law. Rules differ from place to place, change, and bind whoever sells or gives away what was made: '
  + 'follow those where you are, and ask a professional when in doubt.'

function madeOf({ madeFor, materials, sizes }: Pattern, words: string): Made {
  return {
    for: madeFor,
    notions: materials?.notions ?? [],
    fibres: (materials?.yarns ?? []).map(({ fibre }) => fibre ?? '').join(' '),
    words: `${sizes.join(' ')} ${words}`,
  }
}

/** Safety notes for what is made: whole sentences, one paragraph each; empty where nothing calls for one. `words` is all the pattern says. */
export function cautionsOf(pattern: Pattern, words: string): readonly string[] {
  const made = madeOf(pattern, words)
  const hold = cautions.filter(({ holds }) => holds(made)).map(({ says }) => typeset(says))
  return hold.length === 0 ? [] : [...hold, deferring]
}

/** The parts with a short caution after the first line at which a hazard enters: there a maker reads it in time. */
export function withCautions(parts: readonly Part[], pattern: Pattern, words: string): readonly Part[] {
  const made = madeOf(pattern, words)
  let waiting = cautions.filter(({ holds, enters }) => enters !== undefined && holds(made))
  return parts.map((part) => {
    const before = waiting.filter(({ enters }) => enters?.test(part.name))
    waiting = waiting.filter((one) => !before.includes(one))
    const lines = part.lines.flatMap((line): readonly PartLine[] => {
      const text = line.text.map((run) => run.text).join('')
      const here = waiting.filter(({ enters }) => enters?.test(text))
      waiting = waiting.filter((one) => !here.includes(one))
      return [line, ...here.flatMap(besideLine)]
    })
    return { ...part, lines: [...before.flatMap(besideLine), ...lines] }
  })
}

function besideLine({ beside }: Caution): readonly InstructionLine[] {
  return beside === undefined ? [] : [{ kind: 'instruction', caution: true, text: [{ text: typeset(beside), repeat: false }] }]
}
