/** A title with a sign that the heading face lacks is set in the text face, all of it: no title stands in two faces. */
export function titleFace(title: string): 'plain-face' | undefined {
  return /[^\u0020-\u017f\u2013\u2014\u2018-\u201d\u2026\u2212]/.test(title) ? 'plain-face' : undefined
}
