import { readdir, readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { gunzipSync, inflateSync } from 'node:zlib'
import type { Booklet } from '../booklet/booklet.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'

/** Something of a pattern that is sold, found in a file of the public site. */
export interface Leak {
  readonly slug: string
  /** Below the site's folder. */
  readonly file: string
  /** What was found, in words for the terminal. */
  readonly what: string
}

/** Fewer letters and digits than this are common to many patterns: `Sc in each st across.` betrays nothing. */
const tellingLength = 24
/** So many counts one after the other are a table on the pattern's own page; elsewhere it takes more, for many patterns begin alike. */
const tellingCounts = 4
const tellingElsewhere = 10

/** What a free pattern says to everybody: its rows, bare, and its tables of counts. A pattern that is sold may say the same. */
export interface PublicTexts {
  readonly rows: readonly string[]
  readonly tables: readonly string[]
}

/** What a free pattern says to everybody, in all its terms. */
export function publicTexts(free: PatternEntry): PublicTexts {
  return { rows: [...new Set(booklets(free).flatMap(rowTexts))], tables: [...new Set(booklets(free).flatMap(countTables))] }
}

/** What the program itself says: rows in its guide and its help pages are examples, and a pattern that is sold may have the same row. */
export async function programTexts(root: string): Promise<PublicTexts> {
  const inFolder = async (folder: string): Promise<readonly string[]> => (await readdir(join(root, folder))).filter((name) => name.endsWith('.md')).map((name) => join(root, folder, name))
  const texts = await Promise.all([...await inFolder('src/help'), ...await inFolder('src/guide'), join(root, 'src/pages/reading-rows.astro')].map((name) => readFile(name, 'utf8')))
  // A row of an example stands on a line of its own, behind its label and before its total.
  const lines = texts.flatMap((text) => text.split('\n')).map((line) => line.replace(/^\s*[^:]{1,60}:\s/, '').replace(/\s*\([^()]*(?:\([^()]*\))?[^()]*\)\s*$/, ''))
  return { rows: [...new Set(lines.map(bare))], tables: [] }
}

/** What betrays a pattern that is sold. */
interface Telling {
  readonly slug: string
  readonly title: string
  /** Rows that no free pattern has. */
  readonly rows: readonly string[]
  /** Tables of counts: all of them on its own page, and those that no free pattern has elsewhere. */
  readonly counts: readonly string[]
  readonly elsewhere: readonly string[]
}

/** What is looked for of the patterns that are sold, beside what free patterns and the program say to everybody. */
export function tellingOf(forSale: readonly PatternEntry[], texts: readonly PublicTexts[]): readonly Telling[] {
  if (forSale.length === 0) return []
  const known = new Set(texts.flatMap(({ rows }) => rows))
  const knownTables = texts.flatMap(({ tables }) => tables)
  return forSale.map((one) => ({
    slug: one.slug, title: bare(one.booklet?.title ?? ''),
    rows: [...new Set([...booklets(one).flatMap(rowTexts), ...ledgerRows(one)])].filter((row) => row.length >= tellingLength && !known.has(row)),
    counts: booklets(one).flatMap(countTables),
    elsewhere: booklets(one).flatMap(countTables).filter((table) => table.split(' ').length - 2 >= tellingElsewhere && !knownTables.some((other) => other.includes(table))),
  }))
}

/**
 * Looks through every byte of the site's folder for rows, tables of counts and papers of the patterns that are sold. Files that a search for
 * the same has been through are left out.
 */
export async function findLeaks(sold: readonly Telling[], folder: string, searched: ReadonlySet<string> = new Set()): Promise<readonly Leak[]> {
  if (sold.length === 0) return []
  const papersOf = new Map(sold.map(({ slug }) => [slug, new RegExp(`^${slug}-.*\\.(?:pdf|html)$`)]))
  const unseen = withoutSeen()
  const leaks: Leak[] = []
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name)
    const file = path.slice(folder.length + 1)
    if (!entry.isFile() || searched.has(file)) continue
    const bytes = await readFile(path)
    const isPage = file.endsWith('.html')
    const said = isPage ? unseen(readable(bytes)) : readable(bytes)
    const text = bare(said)
    const html = isPage ? countsOn(said) : ''
    for (const { slug, rows, counts, elsewhere, title } of sold) {
      if (papersOf.get(slug)?.test(basename(file)) || (file.endsWith('.pdf') && title !== '' && bare(titleOf(bytes)) === title)) leaks.push({ slug, file, what: 'a file to sell' })
      const row = rows.find((one) => text.includes(one))
      if (row !== undefined) leaks.push({ slug, file, what: `the row “${row}”` })
      const table = (isOwn(file, slug) ? counts : elsewhere).find((one) => html.includes(one))
      if (table !== undefined) leaks.push({ slug, file, what: `the counts ${table.trim()}` })
    }
  }
  return leaks
}

/** Shorter stretches are quicker looked through again than known again. */
const worthKnowing = 10_000

/** Takes out of a page the styles and scripts that an earlier one had: every file to keep holds the same, and the same fonts in them. */
function withoutSeen(): (html: string) => string {
  const seen = new Set<string>()
  return (html) => html.replaceAll(/<(style|script)\b[^>]*>.*?<\/\1>/gs, (block) => {
    if (block.length < worthKnowing) return block
    if (seen.has(block)) return ' '
    seen.add(block)
    return block
  })
}

const isOwn = (file: string, slug: string) => file.includes(slug)

const booklets = ({ booklet, other }: PatternEntry): readonly Booklet[] => [booklet, other].filter((one) => one !== undefined)

function rowTexts({ parts }: Booklet): readonly string[] {
  return parts.flatMap(({ lines }) => lines.map(({ text }) => bare(text.map((run) => run.text).join(''))))
}

/** The rows as the ledger has them: every real row, those too that print says in one line. */
function ledgerRows({ ledger }: PatternEntry): readonly string[] {
  return ledger.flatMap(({ lines }) => lines.map(({ text }) => bare(text.map((run) => run.text).join(''))))
}

/** The counts of each part in each size in their order, alone and with the rows' numbers between them, as tables have them. */
function countTables({ parts }: Booklet): readonly string[] {
  return parts.flatMap(({ lines }) => {
    const rows = lines.flatMap((line) => (line.kind === 'row' ? [line] : []))
    const sizes = Math.max(0, ...rows.map(({ stitches }) => stitches.length))
    return Array.from({ length: sizes }, (_, size) => rows.flatMap(({ label, stitches }) => {
      const count = (stitches[size] ?? stitches[0] ?? '').replaceAll(',', '')
      return /^\d+$/.test(count) ? [{ label, count }] : []
    })).filter((counted) => counted.length >= tellingCounts).flatMap((counted) => [
      ` ${counted.map(({ count }) => count).join(' ')} `, ` ${counted.map(({ label, count }) => `${label} ${count}`).join(' ')} `,
    ])
  })
}

/** The numbers that a page shows, one after the other, without what stands in tags. */
function countsOn(html: string): string {
  return ` ${[...html.replaceAll(/<script.*?<\/script>|<svg.*?<\/svg>|<[^>]*>/gs, ' ').matchAll(/\d[\d,]*/g)].map(([number]) => number.replaceAll(',', '')).join(' ')} `
}

/** All that can be read in a file: its bytes, and the streams that are packed in it, as those of a PDF are. */
function readable(bytes: Buffer): string {
  if (bytes.subarray(0, 2).equals(Buffer.from([0x1f, 0x8b]))) return gunzipSync(bytes).toString('utf8')
  if (bytes.subarray(0, 5).toString('latin1') !== '%PDF-') return bytes.toString('utf8')
  const raw = bytes.toString('latin1')
  const streams = [...raw.matchAll(/stream\r?\n/g)].map(({ index, 0: word }) => {
    const from = index + word.length
    const end = raw.indexOf('endstream', from)
    try {
      return inflateSync(bytes.subarray(from, end)).toString('latin1')
    } catch {
      return ''
    }
  })
  return `${raw}\n${streams.join('\n')}`
}

/** The title that a PDF gives itself in its metadata (ISO 16684-1, dc:title). */
function titleOf(bytes: Buffer): string {
  return /<dc:title>.*?<rdf:li[^>]*>(.*?)<\/rdf:li>/s.exec(bytes.toString('utf8'))?.[1] ?? ''
}

/** Letters and digits alone, so that no setting of type, no tag and no sign hides a row. */
function bare(text: string): string {
  return text.replaceAll(/<[^>]*>/g, '').replaceAll(/&(?:nbsp|amp|lt|gt|quot|#\d+);/g, '').normalize('NFKC').toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '')
}
