import { parse } from 'yaml'
import { z } from 'astro/zod'
import type { GuideEntry } from '../components/guide-entry.ts'
import { helpHtml } from './help-html.ts'

const head = z.object({ title: z.string(), order: z.number(), about: z.string() })

/** One chapter of `src/guide`. Its front-matter has the title, its place among the chapters, and what it is about. */
export function guideEntryOf(name: string, text: string): GuideEntry {
  const front = /^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? ''
  return { name, ...head.parse(parse(front)), html: helpHtml(text) }
}
