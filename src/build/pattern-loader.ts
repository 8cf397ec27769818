import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { handedOver } from './hand-over.ts'

/**
 * Reads the patterns of a folder, works them and gives the pages their booklets. Under `npm run build` they have been worked and handed
 * over. Else a pattern that does not come out ends the build; while patterns are being written (`npm run dev`) its page shows what is
 * wrong, and mends itself when the file is mended.
 */
export function patternLoader(folder: string) {
  return {
    name: 'patterns',
    // What is stored is checked on its way in; the schema only carries its type to the pages.
    schema: z.custom<PatternEntry>(),
    async load(context: LoaderContext): Promise<void> {
      if (handedOver()) return context.store.clear()
      // Astro reads every file of the engine anew, which takes it seconds: only where it is needed.
      const { loadPatterns } = await import('./load-patterns.ts')
      await loadPatterns(context, folder)
    },
  }
}
