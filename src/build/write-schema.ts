import { mkdir, writeFile } from 'node:fs/promises'
import { patternJsonSchema } from '../pattern/json-schema.ts'

// The schema is kept as a file, so that an editor finds it in the project and on the site alike; a test holds the file to it.
const file = new URL('../../public/schema/pattern.json', import.meta.url)
await mkdir(new URL('.', file), { recursive: true })
await writeFile(file, `${JSON.stringify(patternJsonSchema(), undefined, 2)}\n`)
