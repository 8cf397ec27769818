/** Something needed besides yarn and hooks, as lists name it and as rows speak of it. */
export interface NotionWords {
  /** How a sentence names it. */
  readonly name: string
  /** How it stands in a list of materials. */
  readonly listed: RegExp
  /** Words of a row or a note that need it in the hand. */
  readonly used: RegExp
  /** Things that only sound like it: a band for buttons, a stitch called bead. */
  readonly unlike?: RegExp
}

/** Notions whose use is plain from the words. Needles and scissors are in every basket and are not asked for. */
export const notionWords: readonly NotionWords[] = [
  { name: 'a stitch marker', listed: /\bmarkers?\b/i, used: /\b(?:stitch |locking |st )?markers?\b|\bpm\b|\bplace (?:a )?m\b/i },
  { name: 'safety eyes', listed: /\beyes?\b/i, used: /\b(?:safety|plastic|toy|glass) eyes?\b|\b(?:attach|insert|fix|fit|place|push) (?:the |both |two |in )?eyes?\b/i, unlike: /\b(?:embroider|crochet|felt|sew|sewn|french knot)/i },
  { name: 'buttons', listed: /\b(?:buttons?|toggles?|snaps?|press studs?)\b/i, used: /\bbuttons?\b(?! ?(?:band|loop|hole|st\b|stitch|border|row|side|edge|placket|up|closed|mushroom))|\bbuttonholes?\b/i },
  { name: 'filling', listed: /\b(?:fibre ?fill|fiber ?fill|filling|stuffing|wadding|batting|cushion|pillow|pad|insert|fleece|kapok|wool)\b/i, used: /\b(?:stuff(?:ing)?|fibre ?fill|fiber ?fill)\b|\bfill (?:the |it |each |with |both |this |firmly|lightly)/i, unlike: /\bcushion pad|\bpillow form/i },
  { name: 'a zip', listed: /\bzip(?:per)?s?\b/i, used: /\bzip(?:per)?s?\b/i },
  { name: 'ribbon', listed: /\bribbons?\b/i, used: /\b(?:thread|weave|run|sew|tie) (?:the |a |on the |on a )?(?:\S+ )?ribbons?\b/i },
  { name: 'elastic', listed: /\belastic\b/i, used: /\b(?:thread|sew|insert|round|over) (?:the |a |in the )?(?:\S+ )?elastic\b/i },
  { name: 'beads', listed: /\bbeads?\b/i, used: /\b(?:slide|thread|string|pull|push) (?:up )?(?:a |the |all |\d+ )?beads?\b/i },
  { name: 'a bell', listed: /\bbells?\b/i, used: /\b(?:insert|sew|hang|put) (?:in |on )?(?:the |a )?(?:\S+ )?bells?\b/i },
]

/** A tool that only sounds like such a thing: a needle with a large eye, a pompom maker, thread for buttons. */
export function isTool(what: string): boolean {
  return /\b(?:needles?|makers?|thread|pens?|pins?|scissors|tape|glue|pliers)\b/i.test(what)
}
