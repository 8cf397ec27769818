import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Files that take longer than their size tells, the slowest first: the one that builds the site and drives a browser takes minutes, and a few lines may run thousands of pages. */
const slow = [
  'tests/site/site.test.ts', 'tests/edges/edges.test.ts', 'tests/unit/check-command.test.ts', 'tests/edges/wordings.test.ts', 'tests/property/any-text.test.ts', 'tests/unit/pattern/terms.test.ts',
  'tests/written/written.test.ts', 'tests/site/dev.test.ts', 'tests/property/slips.test.ts', 'tests/property/hints.test.ts', 'tests/property/counts.test.ts', 'tests/wordings/wordings.test.ts', 'tests/property/outlines.test.ts', 'tests/spec.test.ts',
]

/** Begins with the slowest files, so that none of them is left to run alone at the end. */
export class SlowestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const at = slow.findIndex((name) => moduleId.endsWith(name))
      return at < 0 ? slow.length : at
    }
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other))
  }
}
