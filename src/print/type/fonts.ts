import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { create, type Font } from 'fontkit'

/** What a piece of text is set in, by its job on the page: Besley for the title and heads, Source Serif for what you do, Source Sans for what you count. */
export type FontRole = 'title' | 'head' | 'text' | 'textItalic' | 'textStrong' | 'count' | 'countStrong' | 'countBold'

const files: Readonly<Record<FontRole, string>> = {
  title: 'besley/500Medium/Besley_500Medium.ttf',
  head: 'besley/600SemiBold/Besley_600SemiBold.ttf',
  text: 'source-serif-4/400Regular/SourceSerif4_400Regular.ttf',
  textItalic: 'source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf',
  textStrong: 'source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf',
  count: 'source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  countStrong: 'source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  countBold: 'source-sans-3/700Bold/SourceSans3_700Bold.ttf',
}

/** Where to look for a character that a font lacks, in this order. */
const fallbacks: Readonly<Record<FontRole, readonly FontRole[]>> = {
  title: ['textStrong', 'countStrong'],
  head: ['textStrong', 'countStrong'],
  text: ['count'],
  textItalic: ['text', 'count'],
  textStrong: ['countStrong'],
  count: ['text'],
  countStrong: ['textStrong'],
  countBold: ['textStrong'],
}

/** Heights over and under the baseline in em, and of a capital, by family: they place the baseline in a line. */
const families = {
  besley: { ascent: 1.25, descent: 0.425, capital: 0.75 },
  serif: { ascent: 1.036, descent: 0.335, capital: 0.67 },
  sans: { ascent: 1.024, descent: 0.4, capital: 0.66 },
}

const resolve = createRequire(import.meta.url).resolve
const opened = new Map<FontRole, Font>()

/** The font of a role. A file is read and parsed once in the life of the program; every document gets the same object. */
export function fontOf(role: FontRole): Font {
  const known = opened.get(role)
  if (known) return known
  const font = create(readFileSync(resolve(`@expo-google-fonts/${files[role]}`)))
  opened.set(role, font)
  return font
}

/** The role itself, then those to fall back on. */
export function rolesFor(role: FontRole): readonly FontRole[] {
  return [role, ...fallbacks[role]]
}

/** Ascent, descent and capital height of a role's family, in em. */
export function heightsOf(role: FontRole): { readonly ascent: number; readonly descent: number; readonly capital: number } {
  if (role === 'title' || role === 'head') return families.besley
  return role === 'text' || role === 'textItalic' || role === 'textStrong' ? families.serif : families.sans
}

const covered = new Map<FontRole, Map<number, boolean>>()

/** Whether a font draws a code point. Glyph 0 is the box for what is missing, even where the font's own map names it. */
export function covers(role: FontRole, codePoint: number): boolean {
  let known = covered.get(role)
  if (!known) covered.set(role, (known = new Map()))
  let answer = known.get(codePoint)
  if (answer === undefined) {
    const font = fontOf(role)
    known.set(codePoint, (answer = font.hasGlyphForCodePoint(codePoint) && font.glyphForCodePoint(codePoint).id !== 0))
  }
  return answer
}
