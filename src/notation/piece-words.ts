import { languages, type Language } from './languages.ts'
import { compilePhrases } from './phrases.ts'
import type { Vocabulary } from './reader.ts'

/**
 * The words of one piece: those of the pattern, and those of the dialect that the piece is written in, which shows in all its rows
 * together. `6V` alone could be anything; after `6X in MR` it is six increases.
 */
export function pieceWords(rows: string, vocabulary: Vocabulary): Vocabulary {
  const letters = usesLetters(rows) && !vocabulary.yarns.includes('X')
  const language = languageOf(rows, vocabulary)
  const tiles = /\bc2c\b|\bcorner[- ]to[- ]corner\b/i.test(rows) || /\bch(?:ain)? 6, \w+ in (?:the )?4th ch from (?:the )?hook\b/i.test(rows) && /\b(?:tile|block)s?\b/i.test(rows)
  if (!letters && !language && !tiles) return vocabulary
  return { ...vocabulary, letters, tiles, ...(language && inLanguage(language, vocabulary)), ...(vocabulary.key !== undefined && { key: JSON.stringify([vocabulary.key, letters, tiles, language?.name]) }) }
}

/**
 * Whether stitches are written as letters: a large X stands where a stitch would (`6X`, `(X, V)`, `2 X in MR`) and does not multiply
 * what stands before it (`(sc, inc) X 6`, `Rep Rows 3-4 X 5`) or after it (`2 X (sc, inc)`, `2X inc`).
 */
function usesLetters(rows: string): boolean {
  return /(?:(?:[(,;:[*]\s*|\d)X|\d X(?! ?\d))(?![\p{L}\d])(?!\s*[([{])(?! (?!in\b|into\b|around\b|across\b|and\b|to\b|x\b)\p{L})/u.test(rows)
}

/** The language that most of the piece's own words belong to; undefined for English. */
function languageOf(rows: string, vocabulary: Vocabulary): Language | undefined {
  const words = new Set(rows.toLowerCase().match(/\p{L}+/gu) ?? [])
  let best: { readonly language: Language; readonly score: number } | undefined
  for (const { language, own } of vocabularies) {
    const found = own.filter((word) => words.has(word) && !isOwn(word, vocabulary))
    const telling = found.some((word) => language.tells.includes(word) && !vocabulary.stitchAt([word]))
    // One strange word in English rows is a slip of the pen; two of one language are that language.
    const plain = found.filter((word) => word.length > 2 || language.tells.includes(word))
    if (telling && plain.length > 1 && found.length > (best?.score ?? 0)) best = { language, score: found.length }
  }
  return best?.language
}

/** Whether the pattern defines the word itself: then its own meaning wins. */
function isOwn(words: string, vocabulary: Vocabulary): boolean {
  const found = vocabulary.stitchAt(words.split(' '))
  return found !== undefined && vocabulary.owns?.(found.stitch) === true
}

/** Every word that a language has for rows, once. */
function ownWords({ stitches, phrases }: Language): readonly string[] {
  return [...new Set([...Object.keys(stitches), ...Object.keys(phrases)].flatMap((words) => words.match(/\p{L}+/gu) ?? []))]
}

const vocabularies = languages.map((language) => ({ language, own: ownWords(language) }))

function inLanguage({ stitches, phrases }: Language, vocabulary: Vocabulary): Partial<Vocabulary> {
  const free = (words: string): boolean => !isOwn(words, vocabulary)
  return {
    phrases: compilePhrases(phrases, (word) => free(word) && !vocabulary.yarns.some((yarn) => yarn.toLowerCase() === word)),
    stitchAt(words) {
      for (let count = Math.min(words.length, 4); count > 0; count -= 1) {
        const name = words.slice(0, count).join(' ').replace(/ ([-–.]) /g, '$1').replace('–', '-')
        const stitch = Object.hasOwn(stitches, name) && free(name) ? stitches[name] : undefined
        if (stitch !== undefined) return { stitch, words: count }
      }
      return vocabulary.stitchAt(words)
    },
  }
}
