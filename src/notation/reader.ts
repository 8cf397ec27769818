import type { Phrase } from './phrases.ts'
import type { Token } from './tokens.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

/** Words that the row language takes from outside: which of them are stitches. */
export interface Vocabulary {
  /** The US word of the stitch that stands at the head of these words (small letters), and how many of the words it takes. */
  stitchAt(words: readonly string[]): { readonly stitch: string; readonly words: number } | undefined
  /** How many names the sizes have; 1 for one size. */
  readonly sizes: number
  /** Letters of the yarns. */
  readonly yarns: readonly string[]
  /** Names of the pattern's pieces. */
  readonly pieces: readonly string[]
  /** Headings over parts of the piece, in small letters: `first shoulder`. */
  readonly parts?: readonly string[]
  /** Whether the pattern defines that stitch itself. */
  owns?(stitch: string): boolean
  /** The piece writes stitches as letters: X, V, A. */
  readonly letters?: boolean
  /** The piece is worked in tiles, from corner to corner. */
  readonly tiles?: boolean
  /** Turns of phrase of the language that the piece is written in. */
  readonly phrases?: readonly Phrase[]
  /** All of this in one text: two vocabularies of one key read a row alike. */
  readonly key?: string
}

/** A walk along the tokens of one row, without its gaps. */
export class Reader {
  readonly all: readonly Token[]
  readonly vocabulary: Vocabulary
  /** The tokens' texts in small letters. */
  private readonly lower: readonly string[]
  readonly sizeLists: Num[] = []
  /** Those of them that name a row: `of Row 12 (16)`. */
  readonly rowLists: Num[] = []
  /** The row is one of tiles, worked from corner to corner. */
  tiles = false
  /** What stands between two stars and is worked again later, by its mark. */
  readonly starred = new Map<string, readonly Instruction[]>()
  /** How deep brackets stand open; kept small so that no text can exhaust the stack. */
  depth = 0
  at = 0
  /** Index of the token at which the row, or the bracket that is being read, ends. */
  limit: number

  constructor(all: readonly Token[], vocabulary: Vocabulary) {
    this.all = all
    this.lower = all.map(({ text }) => text.toLowerCase())
    this.vocabulary = vocabulary
    this.limit = all.length
  }

  peek(ahead = 0): Token | undefined {
    return this.all[this.at + ahead]
  }

  /** The next token's text in small letters; empty at the end. */
  word(ahead = 0): string {
    return this.lower[this.at + ahead] ?? ''
  }

  get done(): boolean {
    return this.at >= this.limit
  }

  /** Takes the next words when they are these, and says whether they were. `?` marks a word that may be missing. */
  take(...words: readonly string[]): boolean {
    let at = this.at
    for (let index = 0; index < words.length; index += 1) {
      const form = words[index]!
      const word = this.lower[at] ?? ''
      if (word === form) {
        at += 1
        continue
      }
      const { optional, words: any } = wanted.get(form) ?? takenApart(form)
      if (any.has(word)) at += 1
      else if (!optional) return false
    }
    this.at = at
    return true
  }

  /** Takes the next word when it is one of these. */
  takeOne(words: ReadonlySet<string>): string | undefined {
    const word = this.word()
    if (!words.has(word)) return undefined
    this.at += 1
    return word
  }

  /** Whether the tokens `ahead` and the one before it touch. */
  touches(ahead = 1): boolean {
    const left = this.all[this.at + ahead - 1]
    const right = this.all[this.at + ahead]
    return left !== undefined && right !== undefined && left.end === right.start
  }

  /** Offset where the next token starts, or where the text ends. */
  get start(): number {
    return this.all[this.at]?.start ?? this.all.at(-1)?.end ?? 0
  }

  /** Offset where the token before ends. */
  get end(): number {
    return this.all[this.at - 1]?.end ?? this.start
  }
}

interface Wanted {
  readonly optional: boolean
  readonly words: ReadonlySet<string>
}

const wanted = new Map<string, Wanted>()

/** `st|sts` is either, `the?` may be missing. Every form is taken apart once: rows ask for the same few thousand times. */
function takenApart(form: string): Wanted {
  const optional = form.endsWith('?') && form.length > 1
  const text = optional ? form.slice(0, -1) : form
  const found = { optional, words: new Set(text.length > 1 ? text.split('|') : [text]) }
  wanted.set(form, found)
  return found
}
