import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const css = readFileSync('src/styles/tokens.css', 'utf8')
const [light = '', dark = ''] = css.split('prefers-color-scheme: dark')
const themes = { light: tokens(light), dark: tokens(dark) }

describe.each(Object.entries(themes))('the %s colours', (_, colour) => {
  // Contrast as WCAG 2.2 defines it; 7:1 is its level AAA for text (1.4.6). 5:1 for edges is our own, above the 3:1 of 1.4.11.
  test.each([
    ['ink', 'paper', 7], ['ink', 'panel', 7], ['soft', 'paper', 7], ['soft', 'panel', 7], ['accent', 'paper', 7], ['accent', 'panel', 7],
    ['on-accent', 'accent', 7], ['line', 'paper', 5], ['line', 'panel', 5],
  ] as const)('%s on %s: %d to 1 and more', (front, ground, least) => {
    expect(contrast(colour[front] ?? '', colour[ground] ?? '')).toBeGreaterThanOrEqual(least)
  })
})

// Black on white is 21:1 and #777 on white 4.48:1, both from the WCAG's own understanding pages, from memory.
test('contrast is measured as WCAG measures it', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
})

function tokens(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries([...text.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', value = '']) => [name, value]))
}

function contrast(a: string, b: string): number {
  const [lighter = 0, darker = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (lighter + 0.05) / (darker + 0.05)
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
