import { describe, expect, test } from 'vitest'
import type { Section } from '../../../src/booklet/booklet.ts'
import { closingOf } from '../../../src/booklet/closing.ts'
import type { Pattern } from '../../../src/pattern/pattern.ts'
import { byHand } from './made-by-hand.ts'

const closing = (more: Partial<Pattern>) => closingOf(byHand([], more).pattern!)
const words = (section: Section | undefined) => (section?.blocks ?? []).map((block) => ('inlines' in block ? block.inlines.map(({ text }) => text).join('').replaceAll('\u00a0', ' ') : ''))

// What buyers look for at the end of a pattern: common practice, no source.
describe('help and rights', () => {
  test('say where help and corrections are, who had a part, and what may be done', () => {
    const { closing: [section] = [] } = closing({
      designer: 'Saltmarsh Yarnworks', date: '2026-11-16', contact: 'Write to help@saltmarsh.example.', errata: 'https://saltmarsh.example/errata',
      licence: 'You may sell what you make', credits: [{ part: 'edited', by: 'The Harbour Office' }],
    })
    expect(section?.heading).toBe('Help and rights')
    expect(words(section)).toEqual([
      'Help: Write to help@saltmarsh.example.', 'Corrections: https://saltmarsh.example/errata', 'Edited by The Harbour Office.', '© 2026 Saltmarsh Yarnworks. You may sell what you make.',
    ])
    const links = section?.blocks.flatMap((block) => ('inlines' in block ? block.inlines.flatMap(({ href }) => href ?? []) : []))
    expect(links).toEqual(['mailto:help@saltmarsh.example', 'https://saltmarsh.example/errata'])
  })

  test('are left out where the pattern says nothing of them', () => {
    expect(closing({ designer: 'Saltmarsh Yarnworks' }).closing).toBeUndefined()
  })
})

describe('versions', () => {
  const change = (version: string, date: string, what: string) => ({ version, date, what })
  test('are told once there is more than the first', () => {
    expect(closing({ changes: [change('1.0.0', '2026-11-01', 'First release.')] }).versions).toBeUndefined()
    expect(words(closing({ changes: [change('1.1.0', '2026-11-20', 'Row 5: was 42'), change('1.0.0', '2026-11-01', 'First release.')] }).versions)).toEqual([
      '1.1.0, 20 November 2026. Row 5: was 42.', '1.0.0, 1 November 2026. First release.',
    ])
  })
})
