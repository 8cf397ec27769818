import type { Target } from './target.ts'

/** `in the end of Row 2`, `in the row-end of the hem row`: one end of one row, where an edge without a row is a whole side. */
export const isEndOfRow = ({ walk, ofRow, rowCalled }: Target): boolean => walk === 'edge' && (ofRow !== undefined || rowCalled !== undefined)
