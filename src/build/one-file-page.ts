import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'

/** A folder of built pages, with what they are made of. */
export interface BuiltPages {
  readonly folder: string
  /** Where the site stands on its host: `/`. */
  readonly base: string
  /** The site's address, for links out of the file; without one they are left out. */
  readonly site: string | undefined
}

/** Turns pages into the bytes of files that stand alone. What all pages share is read and put together once. */
export type OneFile = (html: string, beside: ReadonlyMap<string, string>) => Uint8Array

/**
 * Makes of a page one file that holds its styles, script, fonts and icon, asks nobody for anything, and opens from a disk. `beside` says
 * which addresses of the site lie next to the file, and under which names.
 */
export async function oneFilePages({ folder, base, site }: BuiltPages): Promise<OneFile> {
  const cache = new Map<string, Promise<string>>()
  const text = (address: string) => readFile(join(folder, address.slice(base.length)), 'utf8')
  const data = (address: string): Promise<string> => {
    const known = cache.get(address) ?? readFile(join(folder, address.slice(base.length))).then((bytes) => `data:${typeOf(address)};base64,${bytes.toString('base64')}`)
    cache.set(address, known)
    return known
  }
  const sample = await readFile(join(folder, 'index.html'), 'utf8')
  const style = await styleOf(matchOf(sample, /<link rel="stylesheet" href="([^"]+)"/), { text, data })
  // In a classic script there is no module scope: what it declares stays its own in a block of its own.
  const script = `{${(await text(matchOf(sample, /<script type="module" src="([^"]+)"/))).trim()}}`.replaceAll('</script', '<\\/script')
  const icon = await data(`${base}icon.svg`)
  const policy = [
    "default-src 'none'", `script-src '${hashOf(script)}'`, `style-src '${hashOf(style)}'`, 'font-src data:', 'img-src data:', "base-uri 'none'", "form-action 'none'",
  ].join('; ')
  const alone: (html: string, beside: ReadonlyMap<string, string>) => string = (html, beside) => html
    .replace(/(<meta http-equiv="Content-Security-Policy" content=")[^"]*/, (_, before: string) => before + policy)
    .replaceAll(/<link rel="(?:preload|manifest|alternate|canonical)"[^>]*>/g, '')
    .replaceAll(/<meta name="offline"[^>]*>/g, '')
    .replaceAll(/<link rel="icon"[^>]*>/g, () => `<link rel="icon" href="${icon}" type="image/svg+xml">`)
    .replace(/<script type="module" src="[^"]+"><\/script>/, '')
    .replaceAll(/ href="(\/[^"#]*)(#[^"]*)?"/g, (_, address: string, place: string = '') => {
      const near = beside.get(address)
      if (near !== undefined) return ` href="${near}${place}"`
      return site === undefined ? '' : ` href="${new URL(address, site).href}${place}"`
    })
  // Fonts make a file ten times as long as its page: they go between the page's bytes and never through its text.
  const [styles, scripts] = [Buffer.from(`<style>${style}</style>`), Buffer.from(`<script>${script}</script></body>`)]
  return (html, beside) => {
    const [head = '', body = '', end = ''] = alone(html, beside).split(/<link rel="stylesheet"[^>]*>|<\/body>/)
    return Buffer.concat([Buffer.from(head), styles, Buffer.from(body), scripts, Buffer.from(end)])
  }
}

/** Styles with their fonts in them. A file that somebody keeps has the letters of Western Europe; for others the device's own fonts stand in. */
async function styleOf(address: string, { text, data }: { readonly text: (address: string) => Promise<string>; readonly data: (address: string) => Promise<string> }): Promise<string> {
  const css = (await text(address)).replaceAll(/@font-face\s*\{[^}]*-latin-ext-[^}]*\}/g, '')
  const fonts = [...new Set([...css.matchAll(/url\(["']?(\/[^"')]+)["']?\)/g)].map(([, font = '']) => font))]
  const inlined = new Map(await Promise.all(fonts.map(async (font) => [font, await data(font)] as const)))
  return css.replaceAll(/url\(["']?(\/[^"')]+)["']?\)/g, (whole, font: string) => (inlined.has(font) ? `url(${inlined.get(font)})` : whole))
}

function typeOf(address: string): string {
  return address.endsWith('.woff2') ? 'font/woff2' : 'image/svg+xml'
}

function matchOf(text: string, what: RegExp): string {
  const [, found] = what.exec(text) ?? []
  if (found === undefined) throw new Error(`the first page has no ${what.source}: this is our mistake`)
  return found
}

const hashOf = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`
