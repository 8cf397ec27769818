/** One chapter of the guide to writing rows. */
export interface GuideEntry {
  readonly name: string
  readonly title: string
  readonly order: number
  readonly about: string
  /** The text, from our own Markdown. */
  readonly html: string
}
