/** The part of fontkit that print uses. The package brings no types. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number
    readonly codePoints: readonly number[]
    readonly advanceWidth: number
  }

  export interface GlyphPosition {
    xAdvance: number
    yAdvance: number
    xOffset: number
    yOffset: number
  }

  export interface GlyphRun {
    readonly glyphs: readonly Glyph[]
    readonly positions: readonly GlyphPosition[]
    /** The ink of the whole run, in units of the font. */
    readonly bbox: { readonly minY: number; readonly maxY: number }
  }

  export interface Font {
    readonly unitsPerEm: number
    readonly postscriptName: string
    hasGlyphForCodePoint(codePoint: number): boolean
    glyphForCodePoint(codePoint: number): Glyph
    layout(text: string): GlyphRun
  }

  export function create(file: Uint8Array): Font
}
