/** The page, in mm: it prints unscaled on A4 and on Letter. */
export const page = { width: 210, height: 279.4 }

/** Where things may stand, in mm from the top left of the page. The left margin has room to punch; text ends above the footer. */
export const live = { left: 18, right: 196, top: 14, bottom: 265.4, textBottom: 257, footerRule: 259.9 }

export const liveWidth = live.right - live.left

/** Rules, in points. Heavy opens and closes a table, middle lies under column heads, hair lies between rows. */
export const weights = { heavy: 1.4, middle: 0.7, hair: 0.35, repeat: 0.45, window: 0.5, bar: 0.51, chain: 0.54 }

/** Pencil boxes: side in mm from outer edge to outer edge, line in points; the line's middle lies `inset` mm inside. */
export const pencilBox = { side: 4.6, weight: 0.7, inset: (0.7 * 25.4) / 72 / 2 }

/** Cells of a tally grid: side in mm from line to line, for neighbours share one; line in points. */
export const tallyCell = { side: 5, weight: 0.5, inset: 0 }

/** The distances that things keep from one another, in mm. */
export const gaps = { tiny: 1, small: 1.6, under: 2.4, medium: 4, section: 6.5, large: 10, part: 6 }

/** Prose lines are no longer than this, in mm. */
export const proseWidth = 120

export const mmPerPoint = 25.4 / 72
