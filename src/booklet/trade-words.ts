/** A word of the trade that is no stitch: how it is written, and what it stands for. */
export interface TradeWord {
  /** Spellings as written in rows; several where a plural is a word of its own. Small letters match capitals at a sentence's start. */
  readonly us: readonly string[]
  readonly uk: readonly string[]
  /** For each spelling its meaning; one for all of them when they mean the same. */
  readonly meaning: readonly string[]
}

const word = (spellings: string | readonly string[], meaning: string | readonly string[], uk?: string | readonly string[]): TradeWord => {
  const us = [spellings].flat()
  return { us, uk: uk === undefined ? us : [uk].flat(), meaning: [meaning].flat() }
}

/** Abbreviations of rows and prose, in the order of the alphabet. Units of measure are left to the dictionary. */
export const tradeWords: readonly TradeWord[] = [
  word('alt', 'alternate: every second'),
  word('approx', 'approximately'),
  word(['beg'], 'begin, beginning'),
  word('bet', 'between'),
  word(['BLO', 'BL'], 'back loop only: the loop of the stitch that lies away from you'),
  word('CC', 'contrasting colour'),
  word(['ch-sp', 'ch-sps'], ['chain space: the gap under a chain', 'chain spaces']),
  word(['cont'], 'continue'),
  word('ea', 'each'),
  word(['FLO', 'FL'], 'front loop only: the loop of the stitch that lies towards you'),
  word(['foll'], 'follow, following'),
  word(['lp', 'lps'], ['loop', 'loops']),
  word('MC', 'main colour'),
  word('opp', 'opposite'),
  word(['patt', 'pat'], 'pattern'),
  word('pm', 'place a marker'),
  word('prev', 'previous'),
  word('rem', 'remain, remaining'),
  word('rep', 'repeat'),
  word(['rnd', 'rnds'], ['round', 'rounds']),
  word('RS', 'right side, the side you show'),
  word('sk', 'skip: pass over and do not work', 'miss'),
  word('sm', 'slip the marker: move it up to this row'),
  word(['sp', 'sps'], ['space', 'spaces']),
  word(['st', 'sts'], ['stitch', 'stitches']),
  word('tbl', 'through the back loop'),
  word(['tch', 't-ch'], 'turning chain'),
  word('tog', 'together'),
  word('WS', 'wrong side'),
  word('yo', 'yarn over: lay the yarn over the hook', ['yrh', 'yoh']),
]
