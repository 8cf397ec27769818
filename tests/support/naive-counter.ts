/**
 * A counter that knows nothing: it walks the places of the row below one at a time, as a person does with a finger on the
 * fabric. It shares nothing with the engine; the two are compared. Chains are spaces and never stitches here.
 */

/** Something the next row can go into: a stitch of a kind, or a space of so many chains. */
export type Place = { readonly stitch: string } | { readonly chains: number }

export type Step =
  /** One in each of the next `count` stitches. */
  | { readonly step: 'work'; readonly stitch: string; readonly count: number }
  /** `of` in each of the next `count` stitches. */
  | { readonly step: 'many'; readonly stitch: string; readonly of: number; readonly count: number }
  /** The next `over` stitches closed as one. */
  | { readonly step: 'together'; readonly stitch: string; readonly over: number }
  | { readonly step: 'skip'; readonly count: number }
  | { readonly step: 'skip-space' }
  | { readonly step: 'chain'; readonly chains: number }
  /** `of` in the next space of so many chains; stitches before it are passed, unless the row has just said how many it skips. */
  | { readonly step: 'space'; readonly stitch: string; readonly of: number; readonly chains: number }
  /** Two stitches with chains between them, in one stitch. */
  | { readonly step: 'group'; readonly stitch: string; readonly chains: number }
  /** One in each place, spaces included, to the end. */
  | { readonly step: 'everything'; readonly stitch: string }
  /** One in each stitch until `keepBack` are left. */
  | { readonly step: 'each'; readonly stitch: string; readonly keepBack: number }
  | { readonly step: 'times'; readonly steps: readonly Step[]; readonly times: number }
  /** Again and again until `keepBack` places are left. */
  | { readonly step: 'fill'; readonly steps: readonly Step[]; readonly keepBack: number }
  | { readonly step: 'leave' }

export interface NaiveCount {
  readonly offers: number
  readonly worksOver: number
  readonly leaves: number
  readonly makes: number
  readonly kinds: Readonly<Record<string, number>>
  readonly spaces: Readonly<Record<string, number>>
  /** What it gives the next row, in working order. */
  readonly top: readonly Place[]
  /** It does not come out: stitches are wanted that are not there, or are left without a word. */
  readonly trouble?: string
  /** Two people would read it in two ways: nothing is claimed. */
  readonly unclear?: string
}

class NotThere extends Error {}
class Unclear extends Error {}

/** Works a row over places that lie in working order. A flat row may not begin or end with a chain. */
export function countNaively(below: readonly Place[], steps: readonly Step[], flat: boolean): NaiveCount {
  const left = [...below]
  const top: Place[] = []
  let leftOnPurpose = false
  /** How many places were left when stitches were last skipped. */
  let afterSkip = -1
  const take = (): Place => {
    const place = left.shift()
    if (!place) throw new NotThere('a stitch is wanted and none is left')
    return place
  }
  const takeStitch = (): void => {
    if ('chains' in take()) throw new Unclear('a stitch is wanted and a space comes')
  }
  const pass = (made: readonly Step[]): void => {
    // Handbooks write `rep from * around, skip last sc`: some keep the tail back, some would run out of stitches.
    if (made.slice(0, -1).some(toTheEnd)) throw new Unclear('something comes after the end')
    made.forEach(one)
  }
  const one = (step: Step): void => {
    switch (step.step) {
      case 'work':
        for (let n = 0; n < step.count; n += 1) {
          takeStitch()
          top.push({ stitch: step.stitch })
        }
        return
      case 'many':
        for (let n = 0; n < step.count; n += 1) {
          takeStitch()
          for (let m = 0; m < step.of; m += 1) top.push({ stitch: step.stitch })
        }
        return
      case 'together':
        for (let n = 0; n < step.over; n += 1) takeStitch()
        top.push({ stitch: `${step.stitch}${step.over}tog` })
        return
      case 'skip':
        for (let n = 0; n < step.count; n += 1) takeStitch()
        afterSkip = left.length
        return
      case 'skip-space':
        if (!('chains' in take())) throw new Unclear('a space is skipped and a stitch comes')
        return
      case 'chain':
        top.push({ chains: step.chains })
        return
      case 'space':
        for (let said = left.length === afterSkip, place = take(); !('chains' in place && place.chains === step.chains); place = take()) {
          if ('chains' in place) throw new Unclear('another space comes first')
          if (said) throw new NotThere('stitches lie between those that are skipped and the space')
        }
        for (let m = 0; m < step.of; m += 1) top.push({ stitch: step.stitch })
        return
      case 'group':
        takeStitch()
        top.push({ stitch: step.stitch }, { chains: step.chains }, { stitch: step.stitch })
        return
      case 'everything':
        if (!left.some((place) => 'chains' in place)) throw new Unclear('spaces are named and there are none')
        while (left.length > 0) {
          take()
          top.push({ stitch: step.stitch })
        }
        return
      case 'each':
        if (left.length < step.keepBack) throw new NotThere('fewer are left than are kept back')
        if (left.length === step.keepBack) throw new Unclear('no stitch is left for it')
        while (left.length > step.keepBack) {
          takeStitch()
          top.push({ stitch: step.stitch })
        }
        return
      case 'times':
        for (let n = 0; n < step.times; n += 1) pass(step.steps)
        return
      case 'fill':
        if (left.length <= step.keepBack) throw new NotThere('the repeat has no room at all')
        while (left.length > step.keepBack) {
          const before = left.length
          pass(step.steps)
          if (left.length === before) throw new Unclear('a repeat that works over nothing')
          if (left.length < step.keepBack) throw new NotThere('the last pass reaches into what is kept back')
        }
        return
      case 'leave':
        leftOnPurpose = true
        return
    }
  }
  let trouble: string | undefined
  let unclear: string | undefined
  try {
    pass(steps)
    const last = steps.at(-1)
    if (last && (last.step === 'each' || last.step === 'fill') && last.keepBack > 0) unclear = 'it ends where some are kept back, and that may be meant'
    if (left.length > 0 && left.every((place) => 'chains' in place)) unclear = 'only spaces are left, and they may be passed'
    if (left.length > 0 && !leftOnPurpose) trouble = `${left.length} are left`
    if (left.length === 0 && leftOnPurpose) unclear = 'some are to be left and none are'
    if (top.some((place, index) => 'chains' in place && 'chains' in (top[index + 1] ?? {}))) unclear = 'chains run together'
    if ('chains' in (top[0] ?? {})) unclear = 'the row begins with a chain'
    if (flat && 'chains' in (top.at(-1) ?? {})) unclear = 'the row ends with a chain'
    if (top.length === 0) unclear = 'nothing is made'
  } catch (error) {
    if (error instanceof NotThere) trouble = error.message
    else if (error instanceof Unclear) unclear = error.message
    else throw error
  }
  const stitches = top.filter((place) => 'stitch' in place)
  return {
    offers: below.length,
    worksOver: below.length - left.length,
    leaves: left.length,
    makes: stitches.length,
    kinds: tallied(stitches.map(({ stitch }) => stitch)),
    spaces: tallied(top.filter((place) => 'chains' in place).map(({ chains }) => `ch-${chains}`)),
    top,
    ...(trouble === undefined ? {} : { trouble }),
    ...(unclear === undefined ? {} : { unclear }),
  }
}

function toTheEnd(step: Step): boolean {
  if (step.step === 'times') return step.steps.some(toTheEnd)
  return step.step === 'everything' || ((step.step === 'each' || step.step === 'fill') && step.keepBack === 0)
}

function tallied(names: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {}
  for (const name of names) counts[name] = (counts[name] ?? 0) + 1
  return counts
}
