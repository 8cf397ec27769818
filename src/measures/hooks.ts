/** A hook by the diameter of its shaft, the one measure that all makers share. Letters and numbers are only labels for it. */
export interface HookSize {
  readonly mm: number
  /** Letter and number of the US trade council: `N/P-15`. */
  readonly us?: string
  /** The old number of the UK and Canada: `8`, `000`. */
  readonly uk?: string
}

/**
 * Regular hooks whose labels published charts agree on. A label that charts print in two ways is left out rather than guessed:
 * the old UK numbers from 2.5 to 3 mm and at 3.5 and 3.75 mm, where needle charts and hook charts are two series.
 */
export const hookSizes: readonly HookSize[] = [
  { mm: 2, uk: '14' },
  { mm: 2.25, us: 'B-1', uk: '13' },
  { mm: 2.75, us: 'C-2' },
  { mm: 3.25, us: 'D-3', uk: '10' },
  { mm: 3.5, us: 'E-4' },
  { mm: 3.75, us: 'F-5' },
  { mm: 4, us: 'G-6', uk: '8' },
  { mm: 4.5, us: '7', uk: '7' },
  { mm: 5, us: 'H-8', uk: '6' },
  { mm: 5.5, us: 'I-9', uk: '5' },
  { mm: 6, us: 'J-10', uk: '4' },
  { mm: 6.5, us: 'K-10½', uk: '3' },
  { mm: 7, uk: '2' },
  { mm: 8, us: 'L-11', uk: '0' },
  { mm: 9, us: 'M/N-13', uk: '00' },
  { mm: 10, us: 'N/P-15', uk: '000' },
  { mm: 16, us: 'Q' },
]

/** The labels of a hook, when any are sure. */
export function hookSize(mm: number): HookSize | undefined {
  return hookSizes.find((hook) => hook.mm === mm)
}

/** A hook as materials lists print it: `10 mm (US N/P-15)`; for UK patterns with the old number too: `4 mm (US G-6, old UK 8)`. */
export function hookLabel(mm: number, terms: 'US' | 'UK' = 'US'): string {
  const hook = hookSize(mm)
  const labels = [
    ...(hook?.us === undefined ? [] : [`US\u00a0${hook.us}`]),
    ...(hook?.uk === undefined || terms === 'US' ? [] : [`old\u00a0UK\u00a0${hook.uk}`]),
  ]
  return labels.length === 0 ? `${mm}\u00a0mm` : `${mm}\u00a0mm (${labels.join(', ')})`
}
