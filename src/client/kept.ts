import { readProgress, type Progress } from './progress.ts'

/** What holds for all patterns on this device, and the pattern that was worked last. */
export interface Settings {
  readonly type?: 'large'
  readonly hand?: 'left'
  readonly onlySize?: boolean
  readonly awake?: boolean
  readonly last?: { readonly slug: string; readonly title: string; readonly where: string; readonly address: string }
}

const settingsName = 'loopledger'
const progressName = (slug: string) => `${settingsName}:${slug}`

/** The progress that this device keeps of a pattern. */
export function keptProgress(slug: string): Progress | undefined {
  const text = read(progressName(slug))
  return text === undefined ? undefined : readProgress(text)
}

/** Keeps progress. False when the device does not: its storage is full, or closed to this page. */
export function keepProgress(progress: Progress): boolean {
  return write(progressName(progress.slug), JSON.stringify(progress))
}

/** Whether this device keeps anything for this page. */
export function keeps(): boolean {
  // As long as a few ticks: a storage that is full to the last letter may still take an empty record.
  return write(`${settingsName}?`, ' '.repeat(1000)) && forget(`${settingsName}?`)
}

/** Settings of this device. */
export function keptSettings(): Settings {
  try {
    const value: unknown = JSON.parse(read(settingsName) ?? '{}')
    return typeof value === 'object' && value !== null ? value : {}
  } catch {
    return {}
  }
}

/** Changes some settings and leaves the others. */
export function keepSettings(some: { readonly [Key in keyof Settings]: Settings[Key] | undefined }): void {
  write(settingsName, JSON.stringify({ ...keptSettings(), ...some }))
}

/** Calls back when another window of this site has changed the progress of a pattern. */
export function onProgressElsewhere(slug: string, call: () => void): void {
  addEventListener('storage', ({ key }) => {
    if (key === progressName(slug) || key === null) call()
  })
}

function read(name: string): string | undefined {
  try {
    return localStorage.getItem(name) ?? undefined
  } catch {
    return undefined
  }
}

function write(name: string, text: string): boolean {
  try {
    localStorage.setItem(name, text)
    return true
  } catch {
    return false
  }
}

function forget(name: string): boolean {
  try {
    localStorage.removeItem(name)
    return true
  } catch {
    return false
  }
}
