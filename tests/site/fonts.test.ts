import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import * as fontkit from 'fontkit'
import { expect, test } from 'vitest'
import { signFonts, signs } from '../../src/build/sign-fonts.ts'

const css = readFileSync('src/styles/fonts.css', 'utf8')
const faces = [...css.matchAll(/@font-face \{([^}]+)\}/g)].map(([, body = '']) => ({
  family: /font-family: '([^']+)'/.exec(body)?.[1] ?? '',
  face: `${/font-weight: (\d+)/.exec(body)?.[1]} ${/font-style: (\w+)/.exec(body)?.[1]}`,
  file: fileOf(/url\('([^']+)'\)/.exec(body)?.[1] ?? ''),
  range: /unicode-range: ([^;]+)/.exec(body)?.[1] ?? '',
}))

// The signs that booklets set: minus, times, en dash, fractions of an inch, quotation marks, primes, degree, no-break space.
const printed = 'Ñandú naïve Łódź 0123456789 * ; ( ) [ ] ½ ¼ ¾ ⅓ ⅔ ⅛ ⅜ ⅝ ⅞ × − – — … ‘ ’ “ ” ′ ″ ° ≈ ≤ ≥ ≠ → ← ✓\u00a0'

test.each(['Source Serif 4', 'Source Sans 3'])('%s has every sign that is printed, in each of its weights, in the file that its range names', (family) => {
  const weights = [...new Set(faces.filter((one) => one.family === family).map(({ face }) => face))]
  expect(weights.length).toBeGreaterThanOrEqual(3)
  for (const weight of weights) {
    const own = faces.filter((one) => one.family === family && one.face === weight).map(({ file, range }) => ({ font: fontkit.create(readFileSync(file)), range }))
    const lacking = [...printed].filter((sign) => !own.some(({ font, range }) => inRange(sign, range) && font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)))
    expect(lacking, `${family} ${weight}`).toEqual([])
  }
})

test('the files of signs hold just the signs, and a page that has none of them does not fetch them', () => {
  expect(signFonts.length).toBe(faces.filter(({ file }) => file.includes('-signs-')).length)
  for (const { file, range } of faces.filter(({ file }) => file.includes('-signs-'))) {
    const font = fontkit.create(readFileSync(file))
    expect([...signs].filter((sign) => !font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)), file).toEqual([])
    expect([...signs].filter((sign) => !inRange(sign, range)), file).toEqual([])
    expect(readFileSync(file).length, file).toBeLessThan(3000)
  }
})

function fileOf(url: string): string {
  return url.startsWith('./') ? join(dirname('src/styles/fonts.css'), url) : createRequire(import.meta.url).resolve(url)
}

function inRange(sign: string, range: string): boolean {
  const point = sign.codePointAt(0) ?? 0
  return range.split(',').some((part) => {
    const [first = '', last = first] = part.trim().slice(2).split('-')
    return point >= Number.parseInt(first, 16) && point <= Number.parseInt(last, 16)
  })
}
