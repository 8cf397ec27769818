import { defineCollection } from 'astro/content/config'
import { helpLoader } from './build/help-loader.ts'
import { patternLoader } from './build/pattern-loader.ts'

export const collections = {
  patterns: defineCollection({ loader: patternLoader('patterns') }),
  help: defineCollection({ loader: helpLoader('src/help') }),
}
