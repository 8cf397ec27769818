/** A stretch of text: of one size (its place among the sizes), a sign between the sizes, or neither. */
export interface SizedStretch {
  readonly text: string
  readonly size?: number
  readonly between?: boolean
}

const number = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+(?:\.\d+)?)?[½¼¾⅓⅔⅛⅜⅝⅞]|\d{1,3}(?:,\d{3})+|\d+(?:\.\d+)?|–`
const list = new RegExp(`(?<![\\d.,½¼¾⅓⅔⅛⅜⅝⅞])([+−]?)(${number})([\\s\\u00a0]?[([])((?:[+−]?(?:${number})(?:,[\\s\\u00a0]?(?=[+−\\d½¼¾⅓⅔⅛⅜⅝⅞–]))?)+)([)\\]])`, 'g')

/**
 * Cuts a text with numbers for several sizes: `48 (56, 64)` gives each size its number. A list that has not one number for each size
 * says something else and stays whole, as does everything in a pattern of one size.
 */
export function sizedStretches(text: string, sizes: number): readonly (string | readonly SizedStretch[])[] {
  if (sizes < 2) return [text]
  const out: (string | readonly SizedStretch[])[] = []
  let from = 0
  for (const found of text.matchAll(list)) {
    const [whole, sign = '', first = '', open = '', others = '', close = ''] = found
    const rest = others.split(/(,[\s\u00a0]?(?=[+−\d½¼¾⅓⅔⅛⅜⅝⅞–]))/)
    const values = rest.filter((_, at) => at % 2 === 0)
    // A thousand's comma has no space behind it: `1,250 (1,300)` is cut at commas with a space only.
    const parted = others.includes(', ') || others.includes(',\u00a0') ? others.split(/(,[\s\u00a0])/) : values.length + 1 === sizes ? rest : [others]
    if (parted.filter((_, at) => at % 2 === 0).length + 1 !== sizes) continue
    const own = /[+−]/.test(others)
    if (found.index > from) out.push(text.slice(from, found.index))
    if (!own && sign !== '') out.push(sign)
    out.push([
      { text: `${own ? sign : ''}${first}`, size: 0 },
      { text: open, between: true },
      ...parted.map((part, at): SizedStretch => (at % 2 === 0 ? { text: part, size: at / 2 + 1 } : { text: part, between: true })),
      { text: close, between: true },
    ])
    from = found.index + whole.length
  }
  if (from < text.length) out.push(text.slice(from))
  return out
}
