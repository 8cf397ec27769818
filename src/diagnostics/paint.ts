/** What a stretch of a report is, for colour. Colour only adds: every style reads the same without it. */
export type Style = 'error' | 'warning' | 'context' | 'gutter' | 'strong' | 'hint'

/** Dresses a stretch of text. Never changes the text itself. */
export type Paint = (style: Style, text: string) => string

/** No colour at all. */
export const plain: Paint = (_style, text) => text

// ECMA-48 select graphic rendition: 1 bold, 31 red, 32 green, 33 yellow, 36 cyan, 22 and 39 take them back.
const openings: Readonly<Record<Style, string>> = {
  error: '\u001B[1;31m',
  warning: '\u001B[1;33m',
  context: '\u001B[36m',
  gutter: '\u001B[36m',
  strong: '\u001B[1m',
  hint: '\u001B[32m',
}

/** Colours of a terminal, from the sixteen that every terminal lets its owner choose. */
export const coloured: Paint = (style, text) => (text === '' ? '' : `${openings[style]}${text}\u001B[22;39m`)
