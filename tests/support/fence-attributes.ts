/** What stands after ```rows: how the piece begins and what the pattern around it says. */
export interface FenceAttributes {
  /** `last=34`: the piece begins with a base row of so many sc. */
  readonly last?: number
  /** `lastround=34`: the piece begins with a base round of so many sc. */
  readonly lastround?: number
  readonly terms: 'US' | 'UK'
  readonly sizes: readonly string[]
  /** `turning=dc:counted,hdc:not`. */
  readonly turning: ReadonlyMap<string, 'counted' | 'not counted'>
  readonly slip?: 'counted' | 'not counted'
  readonly chains?: 'counted' | 'not counted'
  /** `stitches="bo:1:1, star:2:1"`: abbreviation, works over, makes. */
  readonly stitches: readonly { readonly abbr: string; readonly worksOver: number; readonly makes: number }[]
  /** `yarns=A,B`: letters in the list of materials. */
  readonly yarns: readonly string[]
  /** `uncounted`: rows of the fence need not state their totals. */
  readonly uncounted: boolean
}

const known = ['last', 'lastround', 'terms', 'sizes', 'turning', 'slip', 'chains', 'stitches', 'yarns', 'uncounted']

/** Reads the words after ```rows. An unknown word is our own slip and throws. */
export function fenceAttributes(meta: string): FenceAttributes {
  const given = new Map<string, string>()
  for (const [, name = '', quoted, bare] of meta.matchAll(/([^\s=]+)(?:=(?:"([^"]*)"|(\S+)))?/g)) {
    if (!known.includes(name)) throw new Error(`a rows fence has no attribute \`${name}\`: ${meta}`)
    given.set(name, quoted ?? bare ?? '')
  }
  const last = given.get('last')
  const lastround = given.get('lastround')
  const slip = given.get('slip')
  const chains = given.get('chains')
  return {
    ...(last === undefined ? {} : { last: wholeNumber(last) }),
    ...(lastround === undefined ? {} : { lastround: wholeNumber(lastround) }),
    terms: given.get('terms') === 'UK' ? 'UK' : 'US',
    sizes: list(given.get('sizes')),
    turning: new Map(list(given.get('turning')).map((entry) => {
      const [stitch = '', says = ''] = entry.split(':')
      return [stitch, convention(says)]
    })),
    ...(slip === undefined ? {} : { slip: convention(slip) }),
    ...(chains === undefined ? {} : { chains: convention(chains) }),
    stitches: list(given.get('stitches')).map((entry) => {
      const [abbr = '', worksOver = '', makes = ''] = entry.split(':')
      return { abbr, worksOver: wholeNumber(worksOver), makes: wholeNumber(makes) }
    }),
    yarns: list(given.get('yarns')),
    uncounted: given.has('uncounted'),
  }
}

function list(text: string | undefined): string[] {
  return text === undefined || text.trim() === '' ? [] : text.split(',').map((entry) => entry.trim())
}

function convention(word: string): 'counted' | 'not counted' {
  if (word === 'counted') return 'counted'
  if (word === 'not' || word === 'not counted') return 'not counted'
  throw new Error(`a convention is \`counted\` or \`not\`, and this is \`${word}\``)
}

function wholeNumber(text: string): number {
  if (!/^\d+$/.test(text)) throw new Error(`a rows fence says \`${text}\` where a number belongs`)
  return Number(text)
}
