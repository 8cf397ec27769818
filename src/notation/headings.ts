/** Words of instructions and places: a line with one of them is no heading. */
const instructions = /\b(?:\p{L}*\d*tog|f?b?p?sc|h?f?p?dc|d?h?tr|dtr|sts?|stitch(?:es)?|chs?|chains?|sl|ss|inc|dec|rep|repeat|skip|sk|miss|magic|mr|fo)\b/iu
/** What a row may say in passing, and a heading too: `Join the legs:`, `Work in rounds:`. */
const inPassing = /\b(?:join|turn|rnds?|rows?|rounds?|work|as|same|even|ring|across|around|change|switch|with|using|cut|break|fasten|pull|draw|place|mark|move|remove|leave|leaving|pick|drop|carry|attach|continue|do|for|from)\b/i
/** Parts of what is made, which alone make a heading of a sentence. */
const parts = /\b(?:first|second|third|fourth|left|right|front|back|shoulders?|neck|neckline|armholes?|sleeves?|body|yoke|brim|crown|toe|heel|cuff|thumb|handles?|straps?|edges?|edging|border|sides?|section|part|tier|base|shaping|gusset|leg|arm|head)\b/i
const words = /^\p{Lu}[\p{L}\d’'&/, -]{1,60}(?:\((?:make|both|worked|left|right|first|second|front|back)[^)]{0,20}\))?[:.]?$/u
/** A row that is at its end: after a full stop, a bracket or a count. */
const done = /(?:[.)\]}>:!]|\b\d+ ?[\p{L}-]+|[-–—=→] ?\d+)$/u

/** `First drop`, `Left mark`: with such a word before it a noun of two meanings is a part. */
const ofSeveral = /^(?:first|second|third|fourth|left|right|upper|lower)[ -]\p{L}+$/iu

/** What is done next, in a word. */
const alone = /^(?:joining|assembly|assembling|finishing|making up|shaping|closing|working even|dividing)$/i

export interface Around {
  /** The text of the row above, where the line would go on with it. */
  readonly above?: string | undefined
  /** The next line begins with a row's label. */
  readonly labelled: boolean
}

/** `First side of keyhole`, `BUTTON SIDE`, `Toe:`, `Sleeve (make 2)`: a few words of no row, which stand over the rows that follow. */
export function isHeading(line: string, { above, labelled }: Around): boolean {
  if (!words.test(line) || line.split(/\s+/).length > 8 || instructions.test(line) || /\d/.test(line.replace(/\b\d+(?=[:.,]?$|,)/g, ''))) return false
  if (line.endsWith(':')) return labelled || above === undefined || !inPassing.test(line) && done.test(above)
  if (labelled && alone.test(line) && (above === undefined || done.test(above))) return true
  if (ofSeveral.test(line) && labelled && (above === undefined || done.test(above))) return true
  if (inPassing.test(line) || above !== undefined && !done.test(above)) return false
  if (line.endsWith('.')) return labelled && parts.test(line)
  return above !== undefined && (labelled || /[.)\]]$/.test(above)) || labelled && (parts.test(line) || line === line.toUpperCase())
}
