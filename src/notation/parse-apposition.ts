import type { Reader } from './reader.ts'

const heads = /^(?:which|bringing|that|this|it|being|namely|i|where|the|a|an|at)$/
const closing: Readonly<Record<string, string>> = { '(': ')', '[': ']' }

/** Takes `, which is the center of the first corner`, `– the middle of a corner`, `(the first corner)` behind a place, and says whether it calls it the middle of a corner. */
export function takeItsCorner(reader: Reader): boolean {
  const { at } = reader
  const close = closing[reader.word()]
  const opened = close !== undefined || /^[,;–—-]$/.test(reader.word())
  if (opened && heads.test(reader.word(1))) {
    reader.at += 1
    const { at: from } = reader
    reader.take('i', '.', 'e', '.?') || reader.take('that', 'is', ',?') || reader.take('which|that', 'lies|sits|stands|falls', 'in')
    while (isQuiet(reader)) reader.at += 1
    const words = reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase())
    if (words.includes('corner') && (close === undefined ? reader.done || /^[,.;:]$/.test(reader.word()) : reader.take(close))) return words.some((word) => /^(?:center|centre|middle)$/.test(word))
  }
  reader.at = at
  return false
}

/** Words without a number, and without work of their own. */
const isQuiet = (reader: Reader): boolean => !reader.done && reader.peek()?.kind !== 'number' && !/^(?:[,.;:()[\]]|and|then|in|into|each|every|next|ch|chain|work|turn)$/.test(reader.word())
