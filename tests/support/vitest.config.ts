import { defineConfig } from 'vitest/config'
import { SlowestFirst } from './slowest-first.ts'

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // Building the site and driving a browser take longer than a unit.
    testTimeout: 90_000,
    hookTimeout: 180_000,
    // Two at a time, on a machine of two cores as well: files of tests wait for builds and browsers as often as they work.
    maxWorkers: 2,
    sequence: { sequencer: SlowestFirst },
    // Nothing is mocked and nothing global is changed, so files of tests may share what they import.
    isolate: false,
  },
})
