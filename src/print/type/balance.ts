import { breakLines, type Line, type Setting, type Span } from './break-lines.ts'

/** Breaks text to lines of about one length: as few as the width allows, then as narrow as that number of lines allows. */
export function balancedLines(spans: readonly Span[], setting: Setting): readonly Line[] {
  const widest = breakLines(spans, setting)
  if (widest.length < 2) return widest
  let narrow = setting.width / 2
  let wide = setting.width
  while (wide - narrow > 0.5) {
    const width = (narrow + wide) / 2
    if (breakLines(spans, { ...setting, width }).length > widest.length) narrow = width
    else wide = width
  }
  return breakLines(spans, { ...setting, width: wide })
}
