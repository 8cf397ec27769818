/** How far somebody is with a pattern. Kept on the device, written to a file on request, sent to nobody. */
export interface Progress {
  readonly kind: 'loopledger progress'
  /** Of this form of record. */
  readonly edition: 1
  readonly slug: string
  readonly title: string
  /** The pattern's version when something was last ticked. */
  readonly version: string
  /** What is ticked: the digest of the row as it stood then, by the box's key: `ball-9.10`, for the second copy `ball-9.10~2`. */
  readonly ticks: Readonly<Record<string, string>>
  /** Repeats done in a row, by the box's key and the place of the repeat among the row's repeats: `ball-9:0`. */
  readonly repeats: Readonly<Record<string, number>>
  /** Pencil notes by the row's name. */
  readonly notes: Readonly<Record<string, string>>
  /** The piece in hand, and which copy of it. */
  readonly part?: string
  readonly copy?: number
  /** The size that is made, by name; undefined shows all. */
  readonly size?: string
}

/** Nothing done yet. */
export function noProgress(slug: string, title: string, version: string): Progress {
  return { kind: 'loopledger progress', edition: 1, slug, title, version, ticks: {}, repeats: {}, notes: {} }
}

/** Progress as it was written, or undefined for anything else: a damaged record or a file of another kind. */
export function readProgress(text: string): Progress | undefined {
  const value = parsed(text)
  if (!isRecord(value) || value.kind !== 'loopledger progress' || value.edition !== 1) return undefined
  const { slug, title, version, part, copy, size } = value
  if (typeof slug !== 'string' || typeof title !== 'string' || typeof version !== 'string') return undefined
  return {
    ...noProgress(slug, title, version),
    ticks: entriesOf(value.ticks, (one) => typeof one === 'string'),
    repeats: entriesOf(value.repeats, (one) => Number.isSafeInteger(one) && Number(one) >= 0),
    notes: entriesOf(value.notes, (one) => typeof one === 'string'),
    ...(typeof part === 'string' ? { part } : {}),
    ...(Number.isSafeInteger(copy) && Number(copy) > 0 ? { copy: Number(copy) } : {}),
    ...(typeof size === 'string' ? { size } : {}),
  }
}

/** With boxes ticked (each with its row's digest) or, where the digest is undefined, no longer ticked. */
export function withTicks(progress: Progress, version: string, boxes: Readonly<Record<string, string | undefined>>): Progress {
  const repeats = Object.fromEntries(Object.entries(progress.repeats).filter(([key]) => !(key.replace(/:\d+$/, '') in boxes)))
  return { ...progress, version, ticks: kept({ ...progress.ticks, ...boxes }), repeats }
}

/** With a record's entry set, or taken out where the value is undefined. */
export function withEntry<T extends string | number>(record: Readonly<Record<string, T>>, key: string, value: T | undefined): Readonly<Record<string, T>> {
  return kept({ ...record, [key]: value })
}

function kept<T>(record: Readonly<Record<string, T | undefined>>): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(record).filter((entry): entry is [string, T & {}] => entry[1] !== undefined))
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function entriesOf<T>(value: unknown, fits: (one: unknown) => boolean): Readonly<Record<string, T>> {
  return isRecord(value) ? Object.fromEntries(Object.entries(value).filter((entry): entry is [string, T] => fits(entry[1]))) : {}
}
