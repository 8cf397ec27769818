import type { DiagnosticCode } from './codes.ts'

/** One thing that a technical editor looks at, and what of it is done here. */
export interface EditorsCheck {
  readonly number: number
  readonly group: string
  readonly what: string
  /** Decided by the machine, only suspected by it and listed, or left to a person. */
  readonly by: 'machine' | 'suspicion' | 'person'
  /** The findings that tell of it. */
  readonly codes: readonly DiagnosticCode[]
  /** In two or three words, for the foot of a report. */
  readonly inShort?: string
  /** Only some of it: a chart that is missing is told, and no chart is read. */
  readonly inPart?: boolean
  /** A property of the product itself, held for every pattern by a test of ours: there is nothing that a designer could do wrong. */
  readonly heldBy?: string
}

/** What editors look at, in the order in which they go through a pattern. Gathered from published checklists of the trade; the words are ours. */
export const editorsList: readonly EditorsCheck[] = [
  { number: 1, group: 'Before starting', what: 'What is to be looked at is agreed: everything, the numbers, the wording, the sizes', by: 'person', codes: [], inShort: 'the scope of the edit' },
  { number: 2, group: 'Before starting', what: 'Everything needed is there: text, facts, sizes, charts, pictures', by: 'suspicion', codes: ['key-missing-to-publish'] },
  { number: 3, group: 'Before starting', what: 'The file says its version and day, and the report is of that version', by: 'machine', codes: ['version-not-in-changes', 'changes-out-of-order', 'key-missing-to-publish'] },
  { number: 4, group: 'What the front-matter says', what: 'Title, summary, designer, version and day stand on the cover', by: 'suspicion', codes: ['key-missing-to-publish', 'key-missing'] },
  { number: 5, group: 'What the front-matter says', what: 'The introduction belongs to this pattern', by: 'suspicion', codes: ['template-leftover'] },
  { number: 6, group: 'What the front-matter says', what: 'The level fits what the rows ask', by: 'suspicion', codes: ['level-below-techniques'] },
  { number: 7, group: 'What the front-matter says', what: 'The terms are stated, and not mixed', by: 'machine', codes: ['terms-mixed', 'key-missing', 'stitch-unknown'] },
  { number: 8, group: 'What the front-matter says', what: 'The finished size is given for every size, and is the same in both units', by: 'machine', codes: ['conversion-wrong', 'value-wrong', 'key-missing-to-publish'] },
  { number: 9, group: 'What the front-matter says', what: 'How the work is built is told before its rows', by: 'suspicion', codes: ['construction-unsaid'] },
  { number: 10, group: 'Materials', what: 'Each yarn has weight, fibre, ball and amount', by: 'machine', codes: ['yarn-details-missing', 'key-missing-to-publish'] },
  { number: 11, group: 'Materials', what: 'Amounts of yarn come out, for each colour and size', by: 'machine', codes: ['yarn-amount-implausible', 'yarn-same-for-all-sizes', 'balls-mismatch', 'sum-wrong', 'ball-outside-weight'] },
  { number: 12, group: 'Materials', what: 'Yarns of the rows are listed, and listed yarns are used', by: 'machine', codes: ['yarn-not-listed', 'yarn-not-used', 'prose-name-unknown'] },
  { number: 13, group: 'Materials', what: 'Hooks of the text are listed, in millimetres, and listed hooks are used', by: 'machine', codes: ['hook-not-listed', 'hook-not-used', 'hook-label-wrong', 'value-wrong'] },
  { number: 14, group: 'Materials', what: 'Notions of the text are listed with their number, and listed ones are used', by: 'machine', codes: ['notion-not-listed', 'notion-not-used', 'notion-count-mismatch'] },
  { number: 15, group: 'Materials', what: 'Yarn, gauge and hook go together', by: 'suspicion', codes: ['gauge-outside-weight', 'hook-outside-weight', 'ball-outside-weight', 'yarn-word-mismatch'] },
  { number: 16, group: 'Materials', what: 'Another yarn can be found by what is said of this one', by: 'suspicion', codes: ['yarn-details-missing'] },
  { number: 17, group: 'Gauge and size', what: 'The gauge is whole: stitches, rows, distance, stitch, hook, state', by: 'machine', codes: ['gauge-incomplete', 'key-missing'] },
  { number: 18, group: 'Gauge and size', what: 'Widths and lengths are the counts at the gauge, in every size', by: 'machine', codes: ['finished-size-mismatch'] },
  { number: 19, group: 'Gauge and size', what: 'Pieces in the round measure what their rounds give', by: 'machine', codes: ['finished-size-mismatch'] },
  { number: 20, group: 'Gauge and size', what: 'There is a gauge for each stitch that decides a measurement', by: 'suspicion', codes: ['gauge-stitch-not-used'] },
  { number: 21, group: 'Gauge and size', what: 'Measurements stand in the order of the sizes and are those of the counts', by: 'machine', codes: ['size-list-order', 'finished-size-mismatch'], inPart: true },
  { number: 22, group: 'Gauge and size', what: 'Rows told by a length are told as not counted', by: 'machine', codes: ['row-not-checked'] },
  { number: 23, group: 'Abbreviations, special stitches, notes', what: 'What is used is explained, and what is explained is used', by: 'machine', codes: ['special-stitch-undefined', 'special-stitch-not-used', 'abbreviation-not-used', 'stitch-unknown'] },
  { number: 24, group: 'Abbreviations, special stitches, notes', what: 'No short word has two meanings', by: 'machine', codes: ['abbreviation-two-meanings'] },
  { number: 25, group: 'Abbreviations, special stitches, notes', what: 'Each special stitch is defined once, with what it works over and makes', by: 'machine', codes: ['special-stitch-undefined', 'special-stitch-incomplete', 'abbreviation-two-meanings'] },
  { number: 26, group: 'Abbreviations, special stitches, notes', what: 'Rows use a special stitch as it is defined', by: 'machine', codes: ['special-stitch-differs'] },
  { number: 27, group: 'Abbreviations, special stitches, notes', what: 'What turning chains count as is said, and rows keep to it', by: 'machine', codes: ['turning-chain-unsaid', 'turning-chain-two-minds'] },
  { number: 28, group: 'Abbreviations, special stitches, notes', what: 'The multiple in the notes fits the chain and the repeat', by: 'machine', codes: ['multiple-mismatch', 'repeat-does-not-divide'] },
  { number: 29, group: 'Abbreviations, special stitches, notes', what: 'Notes and rows say the same', by: 'suspicion', codes: ['prose-count-mismatch', 'prose-reference-unknown', 'prose-name-unknown'] },
  { number: 30, group: 'Abbreviations, special stitches, notes', what: 'Signs of repeats are used one way', by: 'machine', codes: ['repeat-signs-mixed', 'star-read-as-mark'] },
  { number: 31, group: 'Abbreviations, special stitches, notes', what: 'What the text points to is there', by: 'suspicion', codes: ['pointed-at-missing', 'prose-reference-unknown'] },
  { number: 32, group: 'Rows: arithmetic', what: 'Each row works over what the row below holds out, in every size', by: 'machine', codes: ['row-overruns', 'places-left-over'] },
  { number: 33, group: 'Rows: arithmetic', what: 'Each row makes what its total says, in all and by kind', by: 'machine', codes: ['total-mismatch', 'kind-mismatch', 'partial-count-mismatch'] },
  { number: 34, group: 'Rows: arithmetic', what: 'Repeats to the end divide, and what remains is told where to go', by: 'machine', codes: ['repeat-does-not-divide', 'places-left-over'] },
  { number: 35, group: 'Rows: arithmetic', what: 'How often a repeat is worked agrees with the count', by: 'machine', codes: ['row-overruns', 'places-left-over', 'total-mismatch'] },
  { number: 36, group: 'Rows: arithmetic', what: 'A last repeat that ends early leaves the row whole', by: 'machine', codes: ['places-left-over', 'row-overruns'] },
  { number: 37, group: 'Rows: arithmetic', what: 'The first and last stitch are neither lost nor doubled', by: 'machine', codes: ['places-left-over', 'turning-chain-two-minds', 'total-mismatch'] },
  { number: 38, group: 'Rows: arithmetic', what: 'Joins and slip stitches that only travel are not counted', by: 'machine', codes: ['total-mismatch', 'closing-slip-two-minds', 'turning-chain-two-minds'] },
  { number: 39, group: 'Rows: arithmetic', what: 'As many spaces are made as are called for later', by: 'machine', codes: ['place-missing', 'kind-mismatch', 'row-overruns'] },
  { number: 40, group: 'Rows: arithmetic', what: 'Stitches are named only where they are', by: 'machine', codes: ['place-missing', 'kind-mismatch'] },
  { number: 41, group: 'Rows: arithmetic', what: 'Increases and decreases of a section come to its change', by: 'machine', codes: ['change-mismatch', 'total-mismatch'] },
  { number: 42, group: 'Rows: arithmetic', what: 'Corners and sides are as many as stated', by: 'machine', codes: ['sides-unequal', 'kind-mismatch', 'step-lopsided'] },
  { number: 43, group: 'Rows: arithmetic', what: 'Parts of a divided row come to the whole, and wait with their number', by: 'machine', codes: ['places-left-over', 'row-overruns', 'stitches-waiting'] },
  { number: 44, group: 'Rows: arithmetic', what: 'Every step of short rows is picked up or said to be left', by: 'machine', codes: ['places-left-over', 'row-overruns'] },
  { number: 45, group: 'Rows: arithmetic', what: 'The foundation chain less what is skipped is the first row', by: 'machine', codes: ['total-mismatch', 'row-overruns', 'places-left-over'] },
  { number: 46, group: 'Rows: arithmetic', what: 'Both sides of a chain are worked once', by: 'machine', codes: ['total-mismatch', 'row-overruns', 'row-ends-passed'] },
  { number: 47, group: 'Rows: arithmetic', what: 'A count that changes has a cause, and is stated', by: 'machine', codes: ['count-missing', 'total-mismatch'] },
  { number: 48, group: 'Rows: order and reference', what: 'Row numbers run on, and ranges have the length they say', by: 'machine', codes: ['row-number-out-of-order', 'range-length-mismatch'] },
  { number: 49, group: 'Rows: order and reference', what: 'Rows that are repeated are there, and a range ends where it says', by: 'machine', codes: ['row-reference-unknown', 'range-length-mismatch'] },
  { number: 50, group: 'Rows: order and reference', what: 'References have moved with their rows', by: 'machine', codes: ['row-reference-unknown', 'row-overruns', 'prose-reference-unknown'] },
  { number: 51, group: 'Rows: order and reference', what: 'Right and wrong side follow from the turns', by: 'machine', codes: ['side-mismatch'] },
  { number: 52, group: 'Rows: order and reference', what: 'Every row is turned or joined, and not twice', by: 'machine', codes: ['turn-said-twice', 'join-missing'] },
  { number: 53, group: 'Rows: order and reference', what: 'A reversed side is the mirror of the other', by: 'machine', codes: ['sides-shaped-alike', 'row-not-checked'] },
  { number: 54, group: 'Rows: order and reference', what: 'Things told to be done at the same time do not collide', by: 'suspicion', codes: ['row-not-checked'] },
  { number: 55, group: 'Rows: order and reference', what: 'How many of a piece are made is stated, and as many are used', by: 'machine', codes: ['make-mismatch', 'grid-count-mismatch'] },
  { number: 56, group: 'Rows: order and reference', what: 'Pieces have one name everywhere', by: 'machine', codes: ['value-wrong', 'prose-name-unknown'] },
  { number: 57, group: 'Colour, markers, tools in use', what: 'A colour is joined before it is used, and its end is told', by: 'machine', codes: ['yarn-not-listed', 'yarn-end-unsaid'], inPart: true },
  { number: 58, group: 'Colour, markers, tools in use', what: 'Stripes of the list are stripes of the rows', by: 'machine', codes: ['yarn-rows-mismatch'], inPart: true },
  { number: 59, group: 'Colour, markers, tools in use', what: 'Runs of colour come to the row', by: 'machine', codes: ['total-mismatch', 'row-overruns', 'places-left-over'] },
  { number: 60, group: 'Colour, markers, tools in use', what: 'A marker is placed before it is used, and there are enough', by: 'machine', codes: ['marker-not-placed', 'notion-count-mismatch'] },
  { number: 61, group: 'Colour, markers, tools in use', what: 'Changes of hook are told', by: 'machine', codes: ['hook-not-listed', 'hook-not-used'], inPart: true },
  { number: 62, group: 'Sizes', what: 'Every list has a number for each size', by: 'machine', codes: ['size-list-length', 'value-wrong'] },
  { number: 63, group: 'Sizes', what: 'Numbers go steadily with the sizes', by: 'machine', codes: ['size-list-order', 'size-jump-uneven'] },
  { number: 64, group: 'Sizes', what: 'Each size alone comes out', by: 'machine', codes: ['total-mismatch', 'row-overruns', 'places-left-over'] },
  { number: 65, group: 'Sizes', what: 'Rows for some sizes only join again with the right count', by: 'machine', codes: ['size-unknown', 'row-overruns', 'places-left-over'] },
  { number: 66, group: 'Sizes', what: 'Sizes reach a shared point on the same side', by: 'machine', codes: ['sizes-end-apart'] },
  { number: 67, group: 'Sizes', what: 'The fit is even over the sizes', by: 'suspicion', codes: ['size-jump-uneven'] },
  { number: 68, group: 'Joining, edging, finishing', what: 'Edges that are joined match, or are said to be eased', by: 'machine', codes: ['seam-mismatch', 'seam-eased', 'seam-corners-apart', 'seam-lengths-apart', 'seam-parts-mismatch', 'band-joins-mismatch'] },
  { number: 69, group: 'Joining, edging, finishing', what: 'Motifs match on every side, and there are enough of them', by: 'machine', codes: ['sides-unequal', 'motif-sides-mismatch', 'joins-mismatch', 'grid-count-mismatch', 'sum-wrong'] },
  { number: 70, group: 'Joining, edging, finishing', what: 'Stitches that are picked up fit the edge and the edging', by: 'machine', codes: ['row-overruns', 'row-ends-passed', 'repeat-does-not-divide', 'edge-not-next', 'edge-one-off', 'rate-mismatch'] },
  { number: 71, group: 'Joining, edging, finishing', what: 'There are as many buttonholes as buttons', by: 'machine', codes: ['buttonhole-mismatch', 'notion-count-mismatch'] },
  { number: 72, group: 'Joining, edging, finishing', what: 'The finishing can be done in its order', by: 'suspicion', codes: ['eyes-after-closing'] },
  { number: 73, group: 'Joining, edging, finishing', what: 'The place where a thing is sewn on is there', by: 'machine', codes: ['prose-reference-unknown'] },
  { number: 74, group: 'Joining, edging, finishing', what: 'What becomes of the ends is told', by: 'suspicion', codes: ['finishing-unsaid'] },
  { number: 75, group: 'Joining, edging, finishing', what: 'Pictures show what the words make, in the colours and the size named', by: 'person', codes: [], inShort: 'pictures beside the words' },
  { number: 76, group: 'Charts, figures, links', what: 'A chart and the text agree: a chart that is pointed to and not there is told, and no chart is compared', by: 'machine', codes: ['pointed-at-missing'], inPart: true },
  { number: 77, group: 'Charts, figures, links', what: 'Every sign of a chart is in its key: no chart is read here', by: 'machine', codes: ['pointed-at-missing'], inPart: true },
  { number: 78, group: 'Charts, figures, links', what: 'Charts say how a wrong side row is worked, and not how it looks', by: 'person', codes: [], inShort: 'the meaning of chart signs' },
  { number: 79, group: 'Charts, figures, links', what: 'Figures and links that the text names are there', by: 'machine', codes: ['pointed-at-missing'], inPart: true },
  { number: 80, group: 'Charts, figures, links', what: 'Every picture has words', by: 'machine', codes: ['picture-without-words'] },
  { number: 81, group: 'Language and style', what: 'Each word is spelt one way', by: 'machine', codes: ['written-two-ways'] },
  { number: 82, group: 'Language and style', what: 'Labels, totals and signs are written one way', by: 'machine', codes: ['written-two-ways', 'repeat-signs-mixed'], inPart: true },
  { number: 83, group: 'Language and style', what: 'No word is doubled or out of place', by: 'suspicion', codes: ['word-doubled'] },
  { number: 84, group: 'Language and style', what: 'A sentence holds one thought', by: 'suspicion', codes: ['sentence-long'] },
  { number: 85, group: 'Language and style', what: '*Next*, *each* and *same* have a plain target', by: 'suspicion', codes: ['row-unreadable', 'row-not-checked', 'words-passed-over', 'place-missing'] },
  { number: 86, group: 'Language and style', what: 'Words are those of the market', by: 'suspicion', codes: ['word-of-other-market', 'terms-mixed'] },
  { number: 87, group: 'Law, safety, credits', what: 'Designer, year and licence are stated', by: 'suspicion', codes: ['key-missing-to-publish'] },
  { number: 88, group: 'Law, safety, credits', what: 'Cautions that the thing calls for are there', by: 'suspicion', codes: ['hazard-in-notions', 'cord-on-childrens-wear', 'fibre-melts', 'made-for-doubtful'] },
  { number: 89, group: 'Law, safety, credits', what: 'Who is credited has agreed', by: 'suspicion', codes: ['credit-consent-unsaid'] },
  { number: 90, group: 'The finished product', what: 'The PDF says what the text says, every sign of it', by: 'machine', codes: [], heldBy: 'tests/print/pdf-text.test.ts' },
  { number: 91, group: 'The finished product', what: 'No row is parted by a page, no heading stands alone', by: 'machine', codes: [], heldBy: 'tests/print/placed-boxes.test.ts' },
  { number: 92, group: 'The finished product', what: 'Black print is plain, and large print has the same words', by: 'machine', codes: [], heldBy: 'tests/print/large-print.test.ts' },
  { number: 93, group: 'The finished product', what: 'Pages fit A4 and Letter, with safe margins', by: 'machine', codes: [], heldBy: 'tests/print/placed-boxes.test.ts' },
  { number: 94, group: 'The finished product', what: 'The page and the PDF say the same, and both their version', by: 'machine', codes: [], heldBy: 'tests/site/site.test.ts' },
  { number: 95, group: 'The finished product', what: 'There is a box for every real row', by: 'machine', codes: [], heldBy: 'tests/print/checklist.test.ts' },
]

/** What stays with a person, for the foot of every report. */
export const notCheckedByMachine: readonly EditorsCheck[] = editorsList.filter(({ by }) => by === 'person')

/** Checks that a code tells of, by their numbers. */
export function checksOf(code: DiagnosticCode): readonly EditorsCheck[] {
  return editorsList.filter(({ codes }) => codes.includes(code))
}
