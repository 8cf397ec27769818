/** Signs that patterns print and the usual web-font files lack: thirds and eighths, comparisons, arrows, a tick. */
export const signs = '⅓⅔⅛⅜⅝⅞≈≠≤≥←→✓☐☑'

interface SignFont {
  /** File in `src/styles/fonts`. */
  readonly file: string
  /** The full font, in its package. */
  readonly from: string
}

/** One small file for each weight that the pages use, so that a third stands in the same face as the figures beside it. */
export const signFonts: readonly SignFont[] = [
  { file: 'serif-signs-400.woff2', from: '@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf' },
  { file: 'serif-signs-400-italic.woff2', from: '@expo-google-fonts/source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf' },
  { file: 'serif-signs-600.woff2', from: '@expo-google-fonts/source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf' },
  { file: 'sans-signs-400.woff2', from: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf' },
  { file: 'sans-signs-600.woff2', from: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf' },
  { file: 'sans-signs-700.woff2', from: '@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf' },
]
