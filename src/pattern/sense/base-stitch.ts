import { stitchOf } from '../../stitches/terms.ts'

/** The plain stitch that a stitch is made of, by US words: `sc2tog` is sc. Undefined for a word that is no stitch of the table. */
export function baseOf(us: string): string | undefined {
  const stitch = stitchOf(us)
  return stitch && (stitch.base ?? stitch.us)
}

/** Chains that a stitch stands high, by its US word; 1 for a word that the table lacks. */
export function heightOf(us: string): number {
  return stitchOf(us)?.height ?? 1
}
