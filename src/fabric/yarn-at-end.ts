/** Whether the yarn is cut when something is done, or kept. */
export type YarnAtEnd = 'cut' | 'kept'

/** What words say of the yarn: `Fasten off.`, `Do not cut yarn.`; undefined where they say nothing. */
export function yarnAtEnd(words: string): YarnAtEnd | undefined {
  const told = /^(do not |don[’']t )?(?:fasten|finish|cut|break|end) ?(?:off|the yarn|yarn)\b/i.exec(words)
  return told ? (told[1] === undefined ? 'cut' : 'kept') : undefined
}
