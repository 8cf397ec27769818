import { defineCollection } from 'astro/content/config'
import { guideEntryOf } from './build/guide-entry-of.ts'
import { helpEntryOf } from './build/help-entry-of.ts'
import { patternLoader } from './build/pattern-loader.ts'
import { textsLoader } from './build/texts-loader.ts'

export const collections = {
  patterns: defineCollection({ loader: patternLoader('patterns') }),
  help: defineCollection({ loader: textsLoader('src/help', helpEntryOf) }),
  guide: defineCollection({ loader: textsLoader('src/guide', guideEntryOf) }),
}
