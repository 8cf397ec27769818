declare module 'subset-font' {
  /** A font with the characters of a text and nothing else. */
  export default function subsetFont(
    font: Buffer,
    text: string,
    options?: { readonly targetFormat?: 'sfnt' | 'woff' | 'woff2' },
  ): Promise<Buffer>
}
