import { spawnSync } from 'node:child_process'
import { parseArgs } from 'node:util'

/**
 * `npm run spec`: works every row of the spec and of the help pages. With `--update` it writes the `report` fences anew from what
 * the engine prints, and the table of coverage; carets stay as a hand wrote them, so that a report taken on unread cannot hide a wrong place.
 */
const { values } = parseArgs({ options: { update: { type: 'boolean' } } })
const withReports = ['tests/docs.test.ts', 'tests/catalogue.test.ts', 'tests/coverage.test.ts']
const pages = values.update ? withReports : ['tests/spec.test.ts', ...withReports]
const { status } = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--config', 'tests/support/vitest.config.ts', ...pages],
  { stdio: 'inherit', env: { ...process.env, ...(values.update ? { UPDATE_REPORTS: '1' } : {}) } },
)
process.exitCode = status ?? 1
