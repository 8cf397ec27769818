/** The line that the council asks for on every page that shows its figures. */
export const yarnStandardsCredit = 'Yarn weights: Craft Yarn Council\u2019s www.YarnStandards.com'

/** From so many to so many, both included. An end left out is open: `and fewer`, `and larger`. */
export interface Range {
  readonly from?: number
  readonly to?: number
}

/** One category of the published table of yarn weights. Guidelines: a pattern\u2019s own gauge always wins. */
export interface YarnWeight {
  readonly number: number
  readonly name: string
  readonly types: readonly string[]
  /** Stitches over 4 in. Lace is measured in double crochet, all others in single crochet (US words). */
  readonly gauge: Range & { readonly stitch: 'sc' | 'dc' }
  /** Regular hooks, in millimetres. */
  readonly hook: Range
  /** What other editions of the table print, still met in patterns. */
  readonly alternatives: readonly Edition[]
}

/** A reading of a category in an edition of the table other than the current one. */
export interface Edition {
  readonly types?: readonly string[]
  readonly gauge?: Range
  readonly hook?: Range
}

/** Categories 0 to 7, by number, as the current web table prints them. */
export const yarnWeights: readonly YarnWeight[] = [
  {
    number: 0, name: 'Lace', types: ['Fingering', '10-count crochet thread'],
    gauge: { stitch: 'dc', from: 32, to: 42 }, hook: { from: 2.25, to: 2.25 },
    // Lace is mostly worked with steel hooks, for which makers have two series of numbers; the table pairs 1.4 to 1.6 mm with it.
    alternatives: [{ hook: { from: 1.4, to: 1.6 } }],
  },
  {
    number: 1, name: 'Super Fine', types: ['Sock', 'Fingering', 'Baby'],
    gauge: { stitch: 'sc', from: 21, to: 32 }, hook: { from: 2.25, to: 3.5 }, alternatives: [],
  },
  {
    number: 2, name: 'Fine', types: ['Sport', 'Baby'],
    gauge: { stitch: 'sc', from: 16, to: 20 }, hook: { from: 3.5, to: 4.5 }, alternatives: [],
  },
  {
    number: 3, name: 'Light', types: ['DK', 'Light Worsted'],
    gauge: { stitch: 'sc', from: 12, to: 17 }, hook: { from: 4.5, to: 5.5 }, alternatives: [],
  },
  {
    number: 4, name: 'Medium', types: ['Worsted', 'Afghan', 'Aran'],
    gauge: { stitch: 'sc', from: 11, to: 14 }, hook: { from: 5.5, to: 6.5 }, alternatives: [],
  },
  {
    number: 5, name: 'Bulky', types: ['Chunky', 'Craft', 'Rug'],
    gauge: { stitch: 'sc', from: 8, to: 11 }, hook: { from: 6.5, to: 9 }, alternatives: [],
  },
  {
    number: 6, name: 'Super Bulky', types: ['Super Bulky', 'Roving'],
    gauge: { stitch: 'sc', from: 7, to: 9 }, hook: { from: 9, to: 15 },
    alternatives: [
      { types: ['Bulky', 'Roving'], gauge: { from: 5, to: 9 }, hook: { from: 9 } },
      { gauge: { from: 6, to: 9 }, hook: { from: 9, to: 16 } },
    ],
  },
  {
    number: 7, name: 'Jumbo', types: ['Jumbo', 'Roving'],
    gauge: { stitch: 'sc', to: 6 }, hook: { from: 15 },
    alternatives: [{ gauge: { to: 5 }, hook: { from: 16 } }],
  },
]

/** A category by its number. */
export function yarnWeight(number: number): YarnWeight | undefined {
  return yarnWeights.find((weight) => weight.number === number)
}

/** `Super bulky (6)`, as materials lists print it. */
export function yarnWeightLabel(number: number): string {
  const weight = yarnWeight(number)
  return weight === undefined ? `(${number})` : `${weight.name[0]}${weight.name.slice(1).toLowerCase()}\u00a0(${number})`
}

const tradeNames: Readonly<Record<number, Readonly<Record<'US' | 'UK', string>>>> = {
  3: { US: 'DK', UK: 'DK' },
  4: { US: 'worsted', UK: 'aran' },
  5: { US: 'bulky', UK: 'chunky' },
  6: { US: 'super bulky', UK: 'super chunky' },
}

/** What yarn of a category is called over the counter, where shops agree on one word: 4 is worsted in the US and aran in the UK. */
export function tradeName(number: number, terms: 'US' | 'UK'): string | undefined {
  return tradeNames[number]?.[terms]
}

/** The hooks that a category goes with, a range for each edition of the table. */
export function hooksOf(weight: YarnWeight): readonly Range[] {
  return [weight.hook, ...weight.alternatives.flatMap((edition) => edition.hook ?? [])]
}

/** Every category that a hook goes with, in any edition. Neighbours share their end points, so there may be two. */
export function weightsForHook(mm: number): readonly YarnWeight[] {
  return yarnWeights.filter((weight) => hooksOf(weight).some((range) => holds(range, mm)))
}

/** Whether a number lies in a range, ends included. */
export function holds(range: Range, value: number): boolean {
  return value >= (range.from ?? -Infinity) && value <= (range.to ?? Infinity)
}
