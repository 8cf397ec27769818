/** So many files keep a disk busy; more would only hold more of them in memory. */
const most = 8

/** Does the same to many things, several at once: while one waits for the disk, others go on. The first that fails ends it. */
export async function severalAtOnce<T>(things: readonly T[], work: (thing: T) => Promise<unknown>): Promise<void> {
  // All take from the same iterator, so that each thing is taken once.
  const left = things.values()
  await Promise.all(Array.from({ length: most }, async () => {
    for (const thing of left) await work(thing)
  }))
}
