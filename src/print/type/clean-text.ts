/** What needs no cleaning: letters, figures and signs that every font here draws under one code point. No-break spaces stay: they are glue. */
const plain = /^[\x20-\x7e\u00a0\u00bc-\u00be\u00d7\u00e0-\u00f6\u2013\u2014\u2018\u2019\u201c\u201d\u2026\u2212]*$/

/** Signs that share a glyph with another code point. One of each pair is used, so that copied text does not depend on which came first. */
const alike: Readonly<Record<string, string>> = {
  '\u2010': '-', '\u2011': '-', '\u00b5': '\u03bc', '\u2126': '\u03a9', '\u2206': '\u0394', '\u02bb': '\u2018', '\u02bc': '\u2019',
  '\u2215': '\u2044', '\u03d5': '\u03c6', '\u02ed': '\u207c', '\ufb00': 'ff', '\ufb01': 'fi', '\ufb02': 'fl', '\ufb03': 'ffi',
  '\ufb04': 'ffl', '\ufb05': 'st', '\ufb06': 'st',
}
const alikes = new RegExp(`[${Object.keys(alike).join('')}]`, 'gu')

/** Invisible by design: direction marks, joiners, variation selectors, soft hyphens, byte order marks, tags. */
const invisible = /[\u00ad\u034f\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufe00-\ufe0f\ufeff\u{e0000}-\u{e0fff}]/gu

/**
 * Text that can be set: line ends and tabs become spaces, control characters go, each letter has one code point.
 * No-break spaces of any width become U+00A0, all other spaces U+0020; half a surrogate pair becomes U+FFFD.
 */
export function cleanText(text: string): string {
  if (plain.test(text)) return text
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\t\n\v\f\r\u0085\u2028\u2029]+/g, ' ')
    // Control characters and code points that are no character draw nothing in any font.
    .replace(/[\u0000-\u001f\u007f-\u009f\ufdd0-\ufdef]|[\ufffe\uffff]/g, '')
    .replace(invisible, '')
    .replace(/[\u2007\u202f]/g, '\u00a0')
    .replace(/[\u1680\u2000-\u200a\u205f\u3000]/g, ' ')
    .replace(alikes, (sign) => alike[sign] ?? sign)
}
