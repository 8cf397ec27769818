import { holdsPages } from './holds-pages.ts'

// Patterns as different designers word them, their sums worked by hand beside them, and for each the slips that were planted in it.
// Common practice, no source: what an edge offers, and in what order, is what a maker finds with the hook.

holdsPages('tests/edges')
