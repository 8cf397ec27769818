import * as z from 'zod'
import { patternSchema } from './schema/pattern.ts'

/**
 * The JSON Schema (draft 2020-12) of a pattern's front-matter, for completion and red lines in editors. It comes from the
 * definition that reads the file, and describes what is written, not what comes out: `10 cm`, not 10.
 */
export function patternJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...rest } = z.toJSONSchema(patternSchema, { io: 'input', target: 'draft-2020-12' })
  return { $schema, title: 'Crochet pattern', ...rest }
}
