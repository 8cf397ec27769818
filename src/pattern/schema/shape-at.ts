import * as z from 'zod'
import type { Path } from '../entry.ts'

/** The keys that may stand in the group at the end of a path, in the order of the schema. */
export function keysAt(schema: z.core.$ZodType, path: Path): readonly string[] {
  let here: z.core.$ZodType | undefined = schema
  for (const step of path) {
    const group: z.core.$ZodType | undefined = here && bare(here)
    if (group instanceof z.ZodArray) here = group.element
    else if (group instanceof z.ZodObject) here = group.shape[step]
    else return []
  }
  const group = here && bare(here)
  return group instanceof z.ZodObject ? Object.keys(group.shape) : []
}

/** The schema without what only says that it may be left out. */
function bare(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return bare(schema.def.innerType)
  return schema
}
