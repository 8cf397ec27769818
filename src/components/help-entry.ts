/** One help page: what a diagnostic means and what to do. */
export interface HelpEntry {
  readonly code: string
  readonly title: string
  readonly severity: 'error' | 'warning'
  /** The text, from our own Markdown. */
  readonly html: string
}
