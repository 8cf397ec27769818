import { holdsPages } from '../edges/holds-pages.ts'

// Whole patterns as designers write them. The words are common practice, no source; the numbers were worked by hand, row by row and place
// by place, before a program read them. A right pattern must not be blamed for its words, and no slip may pass.

holdsPages('tests/written')
