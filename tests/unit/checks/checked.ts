import { checkPattern } from '../../../src/pattern/check-pattern.ts'

/** Pieces as a pattern in US terms, whose turning chains and slip stitches are not counted. `keys` are more of its front-matter, each with its line end. */
export function checked(pieces: string, keys = '') {
  const text = `---\ntitle: Case\nterms: US\n${keys}conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }\npieces:\n${pieces}\n---\n`
  const { source, pieces: worked, diagnostics } = checkPattern({ path: 'case.md', text })
  return { source, pieces: worked, found: diagnostics.filter(({ code }) => code !== 'key-missing-to-publish') }
}

/** What is told of pieces, without its place. */
export const told = (pieces: string): readonly string[] => checked(pieces).found.map(({ code, message }) => `${code}: ${message}`)

/** A flap of 14 stitches by 8 rows. */
export const flap = `  - name: Flap
    rows: |
      Row 1 (RS): Ch 15, sc in 2nd ch from hook and in each ch across. (14 sc)
      Rows 2-8: Ch 1, turn, sc in each sc across. (14 sc) Fasten off after Row 8.
  - name: Edging
    on: Flap
    rows: |
      Row 1 (RS): With RS facing, join yarn in the row-end`
