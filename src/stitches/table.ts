import { cluster, extended, foundation, post, together, type Stitch } from './define.ts'

const plain = (us: string, uk: string, nameUs: string, nameUk: string, height: number, meaning: string, also: Stitch['also'] = {}): Stitch =>
  ({ us, uk, name: { us: nameUs, uk: nameUk }, also, worksOver: 1, makes: 1, height, meaning })

// US and UK names: the same words stand for different stitches, one step apart. Turning heights: 1, 2, 3, 4, 5 chains.
const sc = plain('sc', 'dc', 'single crochet', 'double crochet', 1, 'hook in, draw up a loop, yarn over, draw through both loops',
  { us: ['s c'], uk: ['d c'] })
const hdc = plain('hdc', 'htr', 'half double crochet', 'half treble crochet', 2, 'yarn over, hook in, draw up a loop, yarn over, draw through all three loops',
  { us: ['h d c', 'half dc', 'half double', 's d c', 'short double crochet'], uk: ['half treble', 'half tr', 'h tr'] })
const dc = plain('dc', 'tr', 'double crochet', 'treble crochet', 3, 'yarn over, hook in, draw up a loop, (yarn over, draw through 2 loops) twice',
  { us: ['d c'], uk: ['treble', 't c'] })
const tr = plain('tr', 'dtr', 'treble crochet', 'double treble crochet', 4, 'yarn over twice, hook in, draw up a loop, (yarn over, draw through 2 loops) 3 times',
  { us: ['treble', 'tr c', 'triple crochet', 'trc'], uk: ['double treble', 'd tr'] })
const dtr = plain('dtr', 'trtr', 'double treble crochet', 'triple treble crochet', 5, 'yarn over 3 times, hook in, draw up a loop, (yarn over, draw through 2 loops) 4 times',
  { us: ['double treble', 'd tr', 'd tr c'], uk: ['ttr', 'trip tr', 'triple treble'] })
const trtr = plain('trtr', 'qtr', 'triple treble crochet', 'quadruple treble crochet', 6, 'yarn over 4 times, hook in, draw up a loop, (yarn over, draw through 2 loops) 5 times',
  { us: ['triple treble', 'tr tr', 'tr tr c'], uk: ['quadtr', 'quadruple treble'] })
const slip: Stitch = { us: 'sl st', uk: 'ss', name: { us: 'slip stitch', uk: 'slip stitch' },
  also: { us: ['ss', 'slst', 'sl', 'sl-st', 'sl stitch', 'slip st'], uk: ['sl st', 'slst', 'sl', 'sl-st', 'slip st'] },
  worksOver: 1, makes: 1, height: 0, meaning: 'hook in, yarn over, draw through everything on the hook' }

const bases = [sc, hdc, dc, tr, dtr]

/** A textured stitch that stands in one place and gives one stitch: the trade's usual meaning. A pattern's own definition wins. */
const textured = (us: string, name: string, meaning: string, also: readonly string[] = [], height = 3): Stitch =>
  ({ us, uk: us, name: { us: name, uk: name }, also: { us: also, uk: also }, worksOver: 1, makes: 1, height, meaning })

const list: readonly Stitch[] = [
  slip, sc, hdc, dc, tr, dtr, trtr,
  ...[sc, hdc, dc, tr, dtr].flatMap((base) => [2, 3].map((n) => together(base, n))),
  ...bases.flatMap((base) => [post(base, 'front'), post(base, 'back')]),
  extended(sc, 'esc', 'edc'), extended(hdc, 'ehdc', 'ehtr'), extended(dc, 'edc', 'etr'), extended(tr, 'etr', 'edtr'),
  { ...plain('ldc', 'ltr', 'linked double crochet', 'linked treble crochet', 3, '{dc} whose first loop is drawn through the bar of the stitch beside it'), base: 'dc' },
  { ...plain('ltr', 'ldtr', 'linked treble crochet', 'linked double treble crochet', 4, '{tr} whose first loops are drawn through the bars of the stitch beside it'), base: 'tr' },
  ...[sc, hdc, dc, tr].map(foundation),
  { ...plain('rev sc', 'rev dc', 'reverse single crochet', 'reverse double crochet', 1, '{sc} worked from left to right',
      { us: ['reverse sc', 'rsc', 'crab st', 'crab stitch', 'crab'], uk: ['reverse dc', 'crab st', 'crab stitch', 'crab'] }), base: 'sc' },
  { ...plain('spike sc', 'spike dc', 'spike single crochet', 'spike double crochet', 1, '{sc} with the hook put in one or more rows below',
      { us: ['spsc', 'spike st', 'spike stitch', 'spike'], uk: ['spdc', 'spike st', 'spike stitch', 'spike'] }), base: 'sc', into: 'below' },
  { ...textured('loop st', 'loop stitch', '{sc} with a long loop left at the back', ['lp st', 'loop stitch', 'fur st', 'fur stitch'], 1), base: 'sc' },
  textured('bo', 'bobble', 'several unfinished {dc} in one stitch, closed together as one', ['bobble', 'mb', 'bob', 'bobble st', 'bobble stitch']),
  textured('pc', 'popcorn', 'several {dc} in one stitch, the last joined to the top of the first', ['popcorn', 'pop', 'pc st', 'popcorn st', 'popcorn stitch']),
  textured('puff', 'puff stitch', 'several unfinished {hdc} in one stitch, closed together as one', ['ps', 'puff st', 'puff stitch'], 2),
  textured('cl', 'cluster', 'several unfinished stitches closed together as one', ['cluster', 'cls', 'clusters']),
  textured('beg cl', 'beginning cluster', 'the cluster that begins a round, its first leg a chain', ['beginning cluster', 'beg cluster', 'starting cluster']),
  { ...textured('knot st', "Solomon's knot", 'a long chain locked with {sc}', ["solomon's knot", 'solomon’s knot', "solomon's knot st", 'knot', 'love knot'], 1), worksOver: 0, into: 'nothing' },
  textured('star st', 'star stitch', 'loops drawn from the star beside it and two stitches below, closed with an eye', ['star stitch', 'star'], 2),
  ...[cluster(dc, 2), cluster(dc, 3), cluster(tr, 3)],
  { us: 'sh', uk: 'sh', name: { us: 'shell', uk: 'shell' }, also: { us: ['shell'], uk: ['shell'] }, worksOver: 1, makes: 5, height: 3, base: 'dc',
    meaning: '5 {dc} in one place' },
  { us: 'V-st', uk: 'V-st', name: { us: 'V-stitch', uk: 'V-stitch' }, also: { us: ['v-stitch', 'v st', 'v stitch', 'vst'], uk: ['v-stitch', 'v st', 'v stitch', 'vst'] },
    worksOver: 1, makes: 2, height: 3, base: 'dc', meaning: '({dc}, ch 1, {dc}) in one place' },
  { us: 'lp', uk: 'lp', name: { us: 'loop pulled up', uk: 'loop pulled up' }, worksOver: 1, makes: 1, height: 1, meaning: 'hook in, draw up a loop and leave it on the hook' },
  { us: 'tss', uk: 'tss', name: { us: 'Tunisian simple stitch', uk: 'Tunisian simple stitch' }, worksOver: 1, makes: 1, height: 1,
    meaning: 'hook behind the front bar, draw up a loop; closed on the return pass' },
]

/** Every stitch the engine knows, once, by its US word. Names, counts and meanings come from here. */
export const stitches: ReadonlyMap<string, Stitch> = new Map(list.map((stitch) => [stitch.us, stitch]))
