/** How one language writes rows. All words stand in small letters. */
export interface Language {
  readonly name: string
  /** Where the words were seen. */
  readonly source: string
  /** Stitches, by the US word. Chains and slip stitches are among the other words: the row language reads them by their own. */
  readonly stitches: Readonly<Record<string, string>>
  /**
   * Other words and turns of phrase, in the English of rows. `#` stands for a number, `*` for a mark of repeats, `a|b` for either word.
   * Where one word of the language can begin several phrases, the longest comes first.
   */
  readonly phrases: Readonly<Record<string, string>>
  /** Words that no English pattern has: a piece must have one of them. */
  readonly tells: readonly string[]
}

/**
 * Words for rows in other languages. Only words that were seen in a source are here; one that a language uses in two senses
 * (French `db`, which is hdc to some and tr to others) is left out, so that a row with it is told as unreadable instead of counted
 * wrong. The small words (in, and, times, each) are those of any dictionary.
 */
export const languages: readonly Language[] = [
  {
    name: 'German',
    source: 'code-knacker.de, kreativehaekelideen.de, craftery.de',
    stitches: {
      'fm': 'sc', 'feste masche': 'sc', 'feste maschen': 'sc', 'hstb': 'hdc', 'halbes stäbchen': 'hdc', 'halbe stäbchen': 'hdc', 'stb': 'dc', 'stäbchen': 'dc',
      'dstb': 'tr', 'doppelstäbchen': 'tr', 'dreifstb': 'dtr',
    },
    phrases: {
      'in? jede|jeder|jedes # . m|masche verd|verdoppeln': 'inc in every # st', 'in? jede|jeder|jedes m|masche verd|verdoppeln': 'inc in each st',
      'ab * wdh|wiederholen': 'rep from *', '# m|maschen ausl|auslassen|übergehen': 'skip # sts', '# m|maschen abn|abnehmen': '# dec',
      'fr|fadenring': 'mr', 'lm|lfm|luftmasche|luftmaschen': 'ch', 'km|ktm|kettmasche|kettmaschen': 'ss', 'abn': 'dec', 'wenden': 'turn', 'wdh': 'rep',
      'jede|jeder|jedes': 'each', 'nächste|nächsten|nächster': 'next', 'm|masche|maschen': 'st', 'und': 'and', 'mal': 'times', 'aus': 'from', 'die|der|den|das': '',
    },
    tells: ['fm', 'stb', 'hstb', 'dstb', 'stäbchen', 'masche', 'maschen', 'luftmaschen', 'lfm', 'wdh', 'verd', 'fadenring', 'wenden', 'nächste'],
  },
  {
    name: 'Dutch',
    source: 'Crochet Terms Translation Chart (PDF)',
    stitches: {
      'v': 'sc', 'vaste': 'sc', 'vasten': 'sc', 'hstk': 'hdc', 'hst': 'hdc', 'h.st': 'hdc', 'stk': 'dc', 'stokje': 'dc', 'stokjes': 'dc', 'dstk': 'tr', 'd.st': 'tr',
      'driedubbel stokje': 'dtr',
    },
    phrases: {
      'halve|halven vaste|vasten': 'ss', 'l|losse|lossen': 'ch', 'hv': 'ss', 'meerderen': 'inc', 'minderen': 'dec', 'elke': 'each', 'volgende': 'next', 'steek|steken': 'st', 'en': 'and',
      'keer': 'times', 'de|het': '',
    },
    tells: ['vaste', 'vasten', 'stk', 'hstk', 'dstk', 'hv', 'stokje', 'stokjes', 'losse', 'lossen', 'meerderen', 'minderen'],
  },
  {
    name: 'French',
    source: 'cachalabibi.com, imaginarium-de-pomme.com',
    stitches: {
      'ms': 'sc', 'maille serrée': 'sc', 'mailles serrées': 'sc', 'demi-br': 'hdc', 'demi-bride': 'hdc', 'demi-brides': 'hdc', 'br': 'dc', 'bs': 'dc', 'bride': 'dc', 'brides': 'dc',
      'dbr': 'tr', 'double bride': 'tr', 'doubles brides': 'tr',
    },
    phrases: {
      'maille|mailles en l’air|l\'air': 'ch', 'anneau|cercle magique': 'mr', 'maille|mailles coulée|coulées': 'ss', 'ml|chaînette': 'ch', 'mc': 'ss', 'aug': 'inc', 'sauter': 'skip',
      'tourner|retourner': 'turn', 'dans': 'in', 'chaque': 'each', 'maille|mailles': 'st', 'et': 'and', 'fois': 'times', 'la|le|les|un|une': '',
    },
    tells: ['ms', 'aug', 'dbr', 'maille', 'mailles', 'anneau'],
  },
  {
    name: 'Spanish',
    source: 'elrincondemaryjoe.blogspot.com, mariacrochet.com',
    // The words of Spain. `Medio punto` is sc in Latin America and the beginning of hdc in Spain, so it is not here.
    stitches: { 'pb': 'sc', 'punto bajo': 'sc', 'puntos bajos': 'sc', 'pma': 'hdc', 'mpa': 'hdc', 'pa': 'dc', 'punto alto': 'dc', 'puntos altos': 'dc', 'pad': 'tr', 'punto alto doble': 'tr', 'pat': 'dtr' },
    phrases: {
      'anillo mágico|magico': 'mr', 'punto raso': 'ss', 'cad|pc|cadeneta|cadenetas': 'ch', 'pr|pe': 'ss', 'aum': 'inc', 'dism': 'dec', 'saltar': 'skip', 'en': 'in', 'cada': 'each',
      'siguiente|siguientes': 'next', 'punto|puntos': 'st', 'y': 'and', 'veces': 'times', 'el|la|los|las|un': '',
    },
    tells: ['pb', 'aum', 'dism', 'mpa', 'pma', 'cad', 'cadeneta', 'cadenetas', 'anillo', 'punto', 'puntos'],
  },
  {
    name: 'Portuguese',
    source: 'cursa.app',
    stitches: { 'pb': 'sc', 'ponto baixo': 'sc', 'pontos baixos': 'sc', 'mpa': 'hdc', 'pma': 'hdc', 'meio ponto alto': 'hdc', 'pa': 'dc', 'ponto alto': 'dc', 'pontos altos': 'dc', 'pad': 'tr', 'ponto alto duplo': 'tr' },
    phrases: {
      'ponto|pontos baixíssimo|baixíssimos': 'ss', 'corr|correntinha|correntinhas': 'ch', 'pbx': 'ss', 'aum': 'inc', 'dim': 'dec', 'virar': 'turn', 'em': 'in', 'cada': 'each', 'ponto|pontos': 'st',
      'e': 'and', 'vezes': 'times', 'o|os|um': '',
    },
    tells: ['pb', 'pbx', 'aum', 'mpa', 'pma', 'corr', 'correntinha', 'correntinhas', 'ponto', 'pontos'],
  },
  {
    name: 'Italian',
    source: 'ileamigurumi.it',
    stitches: { 'mb': 'sc', 'maglia bassa': 'sc', 'maglie basse': 'sc', 'mma': 'hdc', 'mezza maglia alta': 'hdc', 'ma': 'dc', 'maglia alta': 'dc', 'maglie alte': 'dc' },
    phrases: {
      'nell\'anello|nell’anello magico': 'in mr', 'anello magico': 'mr', 'maglia|maglie bassissima|bassissime': 'ss', 'cat|catenella|catenelle': 'ch', 'mbs|mbss': 'ss', 'aum': 'inc', 'dim': 'dec', 'ogni': 'each', 'maglia|maglie': 'st', 'e': 'and',
      'volte': 'times', 'nella|nelle|nel': 'in',
    },
    tells: ['mma', 'mbs', 'mbss', 'aum', 'maglia', 'maglie', 'catenella', 'catenelle', 'anello'],
  },
  {
    name: 'Danish',
    source: 'abcdocz.com 3336666, garnmasken.dk',
    stitches: { 'fm': 'sc', 'fastmaske': 'sc', 'fastmasker': 'sc', 'hstm': 'hdc', 'hstgm': 'hdc', 'stm': 'dc', 'stgm': 'dc', 'stangmaske': 'dc', 'stangmasker': 'dc', 'dstgm': 'tr', '3-dstgm': 'dtr' },
    phrases: {
      'spring over': 'skip', 'dblt stm': 'dstgm', 'lm|luftmaske|luftmasker': 'ch', 'km|kædemaske|kædemasker': 'ss', 'udt|udtagning': 'inc', 'indt|indtagning': 'dec', 'i': 'in', 'hver': 'each',
      'næste': 'next', 'm|maske|masker': 'st', 'og': 'and', 'gange': 'times',
    },
    tells: ['fm', 'hstm', 'hstgm', 'stm', 'stgm', 'dstgm', 'fastmaske', 'fastmasker', 'luftmaske', 'luftmasker', 'udt', 'indt', 'udtagning', 'indtagning'],
  },
  {
    name: 'Swedish',
    source: 'mummolee.blogspot.fi, kylahullu.vuodatus.net, billigt-garn.net',
    // `km` is a chain in the Swedish of Finland, so it is not here.
    stitches: { 'fm': 'sc', 'fast maska': 'sc', 'fasta maskor': 'sc', 'stolpe': 'dc', 'stolpar': 'dc', 'dst': 'tr', 'ds': 'tr', 'dubbelstolpe': 'tr', 'dubbelstolpar': 'tr', 'trippelstolpe': 'dtr' },
    phrases: { 'st|s': 'stolpe', 'lm|luftmaska|luftmaskor': 'ch', 'sm|smygmaska|smygmaskor': 'ss', 'vänd': 'turn', 'i': 'in', 'varje': 'each', 'nästa': 'next', 'm|maska|maskor': 'st', 'och': 'and', 'gånger': 'times' },
    tells: ['fm', 'maska', 'maskor', 'stolpe', 'stolpar', 'luftmaska', 'luftmaskor', 'smygmaska', 'vänd', 'varje'],
  },
  {
    name: 'Norwegian',
    source: 'tokatter.blogspot.com',
    stitches: { 'fm': 'sc', 'hst': 'hdc', 'halvstav': 'hdc', 'halvstaver': 'hdc', 'stav': 'dc', 'staver': 'dc', 'dst': 'tr', 'dobbeltstav': 'tr', 'dobbeltstaver': 'tr' },
    phrases: { 'st': 'stav', 'lm': 'ch', 'km|kjedemaske|kjedemasker': 'ss', 'i': 'in', 'hver': 'each', 'neste': 'next', 'm|maske|masker': 'st', 'og': 'and', 'ganger': 'times' },
    tells: ['fm', 'halvstav', 'halvstaver', 'stav', 'staver', 'dobbeltstav', 'dobbeltstaver', 'kjedemaske', 'kjedemasker'],
  },
]

/** Words for a row and for a round that stand before its number, in those languages. One word for both is for the piece to tell. */
export const rowWords = {
  row: ['reihe', 'reihen', 'rang', 'rangs', 'hilera', 'hileras', 'riga', 'righe', 'carreira', 'carreiras', 'carr', 'række', 'rækker'],
  round: ['runde', 'runden', 'tour', 'tours', 'vuelta', 'vueltas', 'giro', 'giri', 'volta', 'voltas', 'omg', 'omgang', 'omganger'],
  either: ['varv'],
} as const
