/** What a stitch is. Everything that names, counts or explains a stitch reads it from one of these. */
export interface Stitch {
  /** The US abbreviation; it is also the stitch's key everywhere in the program. */
  readonly us: string
  readonly uk: string
  readonly name: { readonly us: string; readonly uk: string }
  /** Other ways that patterns write it, in each terms. */
  readonly also?: { readonly us?: readonly string[]; readonly uk?: readonly string[] }
  /** Stitches of the row below that one of these uses up. */
  readonly worksOver: number
  /** Stitches that the next row can work into. */
  readonly makes: number
  /** Chains that a turning chain needs to reach its height. */
  readonly height: number
  /** The stitch whose name a count may give it: a `sc2tog` is counted among the `sc`. */
  readonly base?: string
  /** How it is made, in a few words. `{x}` is put as the word for x in the terms of the reader. */
  readonly meaning: string
  /** Where it takes its place: on a stitch's top (left out), round its post, from nothing, or below. */
  readonly into?: 'post' | 'nothing' | 'below'
}

/** `hdc` and 2 give `hdc2tog`: n unfinished stitches closed as one, so it works over n and makes 1. */
export function together(base: Stitch, n: number): Stitch {
  return {
    us: `${base.us}${n}tog`,
    uk: `${base.uk}${n}tog`,
    name: { us: `${n} ${base.name.us} worked together`, uk: `${n} ${base.name.uk} worked together` },
    also: { us: [`${n}${base.us}tog`], uk: [`${n}${base.uk}tog`] },
    worksOver: n,
    makes: 1,
    height: base.height,
    base: base.us,
    meaning: `${n} {${base.us}} worked together as one, over ${n} stitches`,
  }
}

/** `dc` and front give `FPdc`: the stitch worked round the post of the stitch below. It uses up the top behind it. */
export function post(base: Stitch, side: 'front' | 'back'): Stitch {
  const mark = side === 'front' ? 'FP' : 'BP'
  const raised = side === 'front' ? 'rf' : 'rb'
  return {
    us: `${mark}${base.us}`,
    uk: `${mark}${base.uk}`,
    name: { us: `${side} post ${base.name.us}`, uk: `${side} post ${base.name.uk}` },
    // Older British print calls them raised: rtrf is a raised treble front.
    also: { us: [`${side} post ${base.us}`], uk: [`${side} post ${base.uk}`, `r${base.uk}${side === 'front' ? 'f' : 'b'}`, `${base.uk}${raised}`, `raised ${base.uk} ${side}`] },
    worksOver: 1,
    makes: 1,
    height: base.height,
    base: base.us,
    meaning: `{${base.us}} worked round the post of the stitch below, from the ${side}`,
    into: 'post',
  }
}

/** `dc` and 3 give `3-dc cl`: n unfinished stitches in one place, closed as one, so it works over 1 and makes 1. */
export function cluster(base: Stitch, n: number): Stitch {
  return {
    us: `${n}-${base.us} cl`,
    uk: `${n}-${base.uk} cl`,
    name: { us: `${n} ${base.name.us} cluster`, uk: `${n} ${base.name.uk} cluster` },
    worksOver: 1,
    makes: 1,
    height: base.height,
    base: 'cl',
    meaning: `${n} {${base.us}} begun in one place and closed together as one`,
  }
}

/** `dc` gives `edc`: one more chain drawn through the first loop before the stitch is finished. */
export function extended(base: Stitch, us: string, uk: string): Stitch {
  return {
    us,
    uk,
    name: { us: `extended ${base.name.us}`, uk: `extended ${base.name.uk}` },
    worksOver: 1,
    makes: 1,
    height: base.height + 1,
    base: base.us,
    meaning: `{${base.us}} with a chain drawn through its first loop`,
  }
}

/** `sc` gives `fsc`: the stitch and the chain beneath it made at once, from nothing. */
export function foundation(base: Stitch): Stitch {
  return {
    us: `f${base.us}`,
    uk: `f${base.uk}`,
    name: { us: `foundation ${base.name.us}`, uk: `foundation ${base.name.uk}` },
    worksOver: 0,
    makes: 1,
    height: base.height,
    base: base.us,
    meaning: `{${base.us}} and the chain beneath it made in one, without a foundation chain`,
    into: 'nothing',
  }
}
