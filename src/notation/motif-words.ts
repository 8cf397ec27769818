const motifs = ['motif', 'square', 'hexagon', 'octagon', 'pentagon', 'block', 'piece', 'triangle', 'medallion', 'flower', 'circle', 'star', 'tile', 'patch']

/** What designers call a motif that is joined to others. */
export const motifWord = motifs.join('|')
/** One of them, or several. */
export const motifWords = [...motifs, 'patches', ...motifs.map((word) => `${word}s`)].join('|')
