export interface CodeInfo {
  readonly severity: 'error' | 'warning'
  readonly title: string
}

/** Every code, once. A code is permanent: it is also a check or a reader's finding, a page in `help/` and a spec case. */
export const codes = {
  // Reading the file
  'file-unreadable': { severity: 'error', title: 'The file cannot be read as a pattern' },
  'front-matter-missing': { severity: 'error', title: 'The file does not begin with front-matter' },
  'front-matter-broken': { severity: 'error', title: 'The front-matter is not readable YAML' },
  'key-unknown': { severity: 'error', title: 'The front-matter has a key that no pattern has' },
  'key-missing': { severity: 'error', title: 'The front-matter lacks a key that it needs' },
  'key-missing-to-publish': { severity: 'warning', title: 'The front-matter lacks a key that a published pattern needs' },
  'value-wrong': { severity: 'error', title: 'A value in the front-matter is not of the kind that it must be' },
  'rows-not-in-block': { severity: 'error', title: 'Rows do not stand in a | block' },
  'count-reference-unknown': { severity: 'error', title: 'A :count[…] in the prose names a row that is not there' },
  'acceptance-not-possible': { severity: 'error', title: 'The front-matter accepts something that cannot be accepted' },
  'acceptance-unmatched': { severity: 'warning', title: 'The front-matter accepts a warning that is not there' },
  // Reading rows
  'row-unreadable': { severity: 'error', title: 'A part of a row cannot be read' },
  'stitch-unknown': { severity: 'error', title: 'A row uses a word that is no known stitch' },
  // Counting rows
  'total-mismatch': { severity: 'error', title: 'A row makes a different number of stitches than its total says' },
  'kind-mismatch': { severity: 'error', title: 'A row makes a different number of one kind than it says' },
  'row-overruns': { severity: 'error', title: 'A row works over more stitches than the row below makes' },
  'places-left-over': { severity: 'error', title: 'A row ends before the row below does, and says nothing of it' },
  'repeat-does-not-divide': { severity: 'error', title: 'A repeat does not fit what is left of the row below' },
  'place-missing': { severity: 'error', title: 'A row works into something that the row below does not have' },
  'row-ends-passed': { severity: 'error', title: 'A border passes over the ends of rows and says nothing of it' },
  'edge-not-next': { severity: 'error', title: 'A border works along an edge that does not come next' },
  'edge-one-off': { severity: 'warning', title: 'A border worked evenly is one stitch off what its edge holds' },
  'step-lopsided': { severity: 'warning', title: 'A piece steps in by different numbers on its two sides' },
  'range-length-mismatch': { severity: 'error', title: 'A range of rows has a different length than it says' },
  'change-mismatch': { severity: 'error', title: 'A row grows or shrinks by another number than it says' },
  'row-number-out-of-order': { severity: 'error', title: 'Row numbers are missing, doubled or out of order' },
  'row-reference-unknown': { severity: 'error', title: 'A row refers to a row that is not there' },
  'size-list-length': { severity: 'error', title: 'A list of numbers has too few or too many for the sizes' },
  'size-list-order': { severity: 'warning', title: 'A list of numbers does not go steadily up or down with the sizes' },
  'size-unknown': { severity: 'error', title: 'A row is for a size that the pattern does not have' },
  'turning-chain-unsaid': { severity: 'warning', title: 'Nothing says whether the turning chain counts, and the counts depend on it' },
  'turning-chain-two-minds': { severity: 'error', title: 'Some rows count the turning chain as a stitch and some do not' },
  'count-missing': { severity: 'warning', title: 'A row changes the count and states none' },
  'row-not-checked': { severity: 'warning', title: 'A row cannot be counted' },
  'fabric-too-large': { severity: 'error', title: 'A pattern has more stitches than are worked' },
  // Across pieces
  'seam-mismatch': { severity: 'error', title: 'Two edges to be sewn together have different numbers of stitches' },
  // The words and the list of materials
  'terms-mixed': { severity: 'warning', title: 'A pattern in one kind of terms has words of the other' },
  'yarn-not-listed': { severity: 'error', title: 'A row uses a yarn that the materials do not list' },
  'yarn-not-used': { severity: 'warning', title: 'The materials list a yarn that no row uses' },
  'special-stitch-differs': { severity: 'warning', title: 'A special stitch has another number of legs than its definition' },
  'special-stitch-undefined': { severity: 'warning', title: 'A row uses a special stitch that the pattern does not define' },
  // The front-matter beside the rows and the words
  'gauge-incomplete': { severity: 'warning', title: 'The gauge leaves out a stitch, a hook or a state' },
  'gauge-stitch-not-used': { severity: 'warning', title: 'The gauge is measured in a stitch that no row has' },
  'gauge-outside-weight': { severity: 'warning', title: 'The gauge is far from what the yarn\'s weight gives' },
  'hook-outside-weight': { severity: 'warning', title: 'The hook is far from what the yarn\'s weight is worked with' },
  'ball-outside-weight': { severity: 'warning', title: 'A ball has another length than yarn of its weight' },
  'hook-not-listed': { severity: 'warning', title: 'A hook is used that the materials do not list' },
  'hook-not-used': { severity: 'warning', title: 'The materials list a hook that nothing speaks of' },
  'notion-not-listed': { severity: 'warning', title: 'The text takes something that the materials do not list' },
  'notion-not-used': { severity: 'warning', title: 'The materials list something that nothing speaks of' },
  'notion-count-mismatch': { severity: 'warning', title: 'The text takes more of something than the materials list' },
  'yarn-details-missing': { severity: 'warning', title: 'A yarn is listed without what a buyer needs to know' },
  'yarn-amount-implausible': { severity: 'warning', title: 'The yarn is far more or less than the stitches take' },
  'yarn-same-for-all-sizes': { severity: 'warning', title: 'All sizes are given the same amount of yarn' },
  'finished-size-mismatch': { severity: 'warning', title: 'A finished measurement is not what the counts give at the gauge' },
  'conversion-wrong': { severity: 'error', title: 'A measurement in two units is not the same in both' },
  'level-below-techniques': { severity: 'warning', title: 'The level promises less than the rows ask' },
  'made-for-doubtful': { severity: 'warning', title: 'The title or summary speaks for another use than `made-for`' },
  'hazard-in-notions': { severity: 'warning', title: 'A notion is a hazard to those the work is made for' },
  'cord-on-childrens-wear': { severity: 'warning', title: 'A cord or tie stands at the neck or hood of something for a child' },
  'fibre-melts': { severity: 'warning', title: 'Something that is to hold heat is worked in yarn that melts' },
  'version-not-in-changes': { severity: 'warning', title: 'The version and the changes tell different things' },
  'changes-out-of-order': { severity: 'warning', title: 'The changes do not stand newest first' },
  'make-mismatch': { severity: 'warning', title: 'More of a piece is used than is made' },
  'special-stitch-not-used': { severity: 'warning', title: 'A special stitch is defined and not used' },
  'special-stitch-incomplete': { severity: 'warning', title: 'A special stitch is defined without how it is worked' },
  'abbreviation-two-meanings': { severity: 'warning', title: 'One short word stands for two things' },
  // The rows beside one another
  'side-mismatch': { severity: 'error', title: 'A row calls itself another side than its turns make it' },
  'turn-said-twice': { severity: 'warning', title: 'The work is turned twice between two rows' },
  'join-missing': { severity: 'warning', title: 'A round ends without a join, and the next begins as after one' },
  'sides-unequal': { severity: 'warning', title: 'The sides of a motif do not match' },
  'sides-shaped-alike': { severity: 'warning', title: 'A left and a right piece are shaped at the same edge' },
  'sizes-end-apart': { severity: 'warning', title: 'Sizes end a piece on different sides' },
  'repeat-signs-mixed': { severity: 'warning', title: 'Repeats stand in two kinds of brackets' },
  'marker-not-placed': { severity: 'warning', title: 'A row works to a marker that nothing has placed' },
  'yarn-end-unsaid': { severity: 'warning', title: 'Nothing says what becomes of a yarn when it changes' },
  'yarn-rows-mismatch': { severity: 'warning', title: 'The materials give other rows for a yarn than the rows do' },
  'eyes-after-closing': { severity: 'warning', title: 'Safety eyes are told after the piece is closed' },
  'written-two-ways': { severity: 'warning', title: 'One word is written in two ways' },
  'word-doubled': { severity: 'warning', title: 'A small word stands twice in a row' },
  'sentence-long': { severity: 'warning', title: 'A sentence is too long to be read at a glance' },
  'word-of-other-market': { severity: 'warning', title: 'A word of yarn belongs to the other terms' },
  // The text beside the rows
  'prose-count-mismatch': { severity: 'error', title: 'The text gives a row another count than it makes' },
  'prose-reference-unknown': { severity: 'error', title: 'The text names a row that is not there' },
  'prose-name-unknown': { severity: 'warning', title: 'The text names a yarn, size, piece or stitch that the pattern does not have' },
  'sum-wrong': { severity: 'error', title: 'A sum in the text does not come out' },
  'multiple-mismatch': { severity: 'warning', title: 'A multiple in the text does not fit the foundation' },
  'pointed-at-missing': { severity: 'warning', title: 'The text points to a chart, picture or link that the file does not hold' },
  'picture-without-words': { severity: 'warning', title: 'A picture has no words for those who do not see it' },
  'template-leftover': { severity: 'warning', title: 'A sentence speaks of another thing than the pattern' },
  'star-read-as-mark': { severity: 'warning', title: 'The star of a repeat is lost in the text' },
  'credit-consent-unsaid': { severity: 'warning', title: 'Somebody is credited and nothing says that they agreed' },
  'construction-unsaid': { severity: 'warning', title: 'Nothing outside the rows says how the work is built' },
  'finishing-unsaid': { severity: 'warning', title: 'Nothing says what becomes of the ends' },
  'size-jump-uneven': { severity: 'warning', title: 'One size jumps further from the last than the others' },
} as const satisfies Record<string, CodeInfo>

export type DiagnosticCode = keyof typeof codes

/** Severity of a code. */
export function severityOf(code: DiagnosticCode): 'error' | 'warning' {
  return codes[code].severity
}
