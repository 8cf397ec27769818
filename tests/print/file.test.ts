import { execFileSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { printChecklist, printPattern } from '../../src/print/print-pattern.ts'
import { fromCollection } from './booklets/collection.ts'
import { float } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { bare, hostileTitles, titled } from './booklets/hostile.ts'
import { isDict, isRef, readPdfObjects } from './pdf-objects.ts'
import { openPdf, pagesOf, textOf } from './read-pdf.ts'

const latin1 = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1')

describe('the file', () => {
  test('is the same bytes each time, whatever was printed between', async () => {
    const first = await printPattern(float)
    await printPattern(titled(hostileTitles.combined))
    await printPattern(gangway(3))
    expect(Buffer.compare(await printPattern(float), first)).toBe(0)
  })

  test('is the same bytes in another time zone and in a program that printed something else before', async () => {
    const print = (zone: string, before: string) => execFileSync(process.execPath, ['--input-type=module', '-e', `
      import { createHash } from 'node:crypto'
      import { printPattern } from './src/print/print-pattern.ts'
      import { float } from './tests/print/booklets/float.ts'
      import { titled } from './tests/print/booklets/hostile.ts'
      if (${JSON.stringify(before)}) await printPattern(titled(${JSON.stringify(before)}))
      process.stdout.write(createHash('sha256').update(await printPattern(float)).digest('hex'))
    `], { env: { ...process.env, TZ: zone, NODE_NO_WARNINGS: '1' }, encoding: 'utf8' })
    // Accented letters are made of parts, which are letters of their own.
    const accented = print('Pacific/Auckland', 'ÀÉÎÕÜ àéîõü ﬁﬂ Ω µ')
    expect(accented).toMatch(/^[0-9a-f]{64}$/)
    expect(accented).toBe(print('America/St_Johns', ''))
  })

  test('says what it is: PDF/UA-1, tagged, its language, its title in the window', async () => {
    const file = latin1(await printPattern(float))
    expect(file.startsWith('%PDF-1.7\n')).toBe(true)
    expect(file).toMatch(/<pdfuaid:part>1<\/pdfuaid:part>/)
    const { catalogue, dictAt } = readPdfObjects(await printPattern(float))
    expect(dictAt(catalogue.dict.get('MarkInfo'))?.dict.get('Marked')).toBe(true)
    expect(dictAt(catalogue.dict.get('ViewerPreferences'))?.dict.get('DisplayDocTitle')).toBe(true)
    expect(file).toMatch(/\/Lang \(en-US\)/)
    expect(latin1(await printPattern(bare))).toMatch(/\/Lang \(en-GB\)/)
  })

  test('says who made it, what it is about and when, by the day of the version', async () => {
    const pdf = await openPdf(await printPattern(float))
    const { info, metadata } = await pdf.getMetadata()
    expect(info).toMatchObject({ Title: 'Float', Author: 'Saltmarsh Yarnworks', Subject: float.summary, CreationDate: 'D:20270314000000Z' })
    expect(metadata.get('dc:title')).toBe('Float')
    expect(metadata.get('dc:creator')).toEqual(['Saltmarsh Yarnworks'])
  })

  test.each(Object.entries(hostileTitles))('keeps its metadata well-formed with the title %s', async (_, title) => {
    const file = Buffer.from(await printPattern(titled(title))).toString('utf8')
    const xml = /<\?xpacket begin[^]*?<\?xpacket end="w"\?>/.exec(file)?.[0] ?? ''
    expect(xml).toContain('<dc:title>')
    // A bare ampersand or a control character would make the packet no XML at all (XML 1.0, 2.2 and 2.4).
    expect(xml).not.toMatch(/&(?!amp;|lt;|gt;)/)
    expect(xml).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/)
    const inside = /<dc:title>[^]*?x-default">([^]*?)<\/rdf:li>/.exec(xml)?.[1] ?? ''
    expect(inside).not.toContain('<')
    expect(inside.length).toBeGreaterThan(3)
  })

  test('embeds every font, and names no font outside the three families', async () => {
    const file = latin1(await printPattern(float))
    const { objects } = readPdfObjects(await printPattern(float))
    const descriptors = [...objects.values()].filter((value) => isDict(value) && value.dict.get('Type') === '/FontDescriptor')
    const fonts = descriptors.map((one) => String(isDict(one) && one.dict.get('FontName')).replace(/^\/[A-Z]{6}\+/, ''))
    expect(fonts.length).toBeGreaterThanOrEqual(7)
    expect(fonts.filter((name) => !/^(Besley|SourceSerif4|SourceSans3)-/.test(name ?? ''))).toEqual([])
    expect(descriptors.every((one) => isDict(one) && isRef(one.dict.get('FontFile2')))).toBe(true)
    // A list of glyphs would have to be complete (ISO 14289-1, 7.21.4.2), and is not asked for.
    expect(file).not.toContain('/CIDSet')
  })
})

describe('check boxes', () => {
  test('can be ticked, have a name, and stand on every row and every thing to buy', async () => {
    const pages = await pagesOf(await openPdf(await printPattern(float)))
    const boxes = (await Promise.all(pages.map((page) => page.getAnnotations()))).flat().filter(({ subtype }) => subtype === 'Widget')
    expect(boxes.every(({ checkBox, exportValue, fieldValue }) => checkBox && exportValue === 'Yes' && fieldValue === 'Off')).toBe(true)
    const names = boxes.map(({ fieldName }) => fieldName)
    // 24 rounds, 4 rows, 6 things.
    expect(names).toHaveLength(34)
    expect(names).toEqual(expect.arrayContaining(['The ball, Round 1', 'The ball, Round 12', 'The becket, Row 4', 'Materials, Yarn A, rust']))
    expect(boxes.map(({ alternativeText }) => alternativeText)).toEqual(names)
  })

  test('are 4.6 mm squares on the paper itself, so that a printer that leaves out forms prints them too', async () => {
    const [first] = (await Promise.all((await pagesOf(await openPdf(await printPattern(float)))).slice(2, 3).map((page) => page.getAnnotations()))).flat().filter(({ subtype }) => subtype === 'Widget')
    const [left = 0, bottom = 0, right = 0, top = 0] = first?.rect as number[]
    expect(((right - left) * 25.4) / 72).toBeCloseTo(4.6, 2)
    expect(((top - bottom) * 25.4) / 72).toBeCloseTo(4.6, 2)
  })
})

// Ticked in a reader that has nothing to do with the writer, saved by it, and opened again.
describe('a box that is ticked on a screen', () => {
  test('is ticked when the file was saved, and no other is', async () => {
    const pdf = await openPdf(await printPattern(float))
    const boxesIn = async (file: typeof pdf) => (await Promise.all((await pagesOf(file)).map((page) => page.getAnnotations()))).flat().filter(({ checkBox }) => checkBox)
    const box = (await boxesIn(pdf)).find(({ fieldName }) => fieldName === 'The ball, Round 12')
    pdf.annotationStorage.setValue(box?.id, { value: true })
    const saved = await boxesIn(await openPdf(await pdf.saveDocument()))
    expect(saved.filter(({ fieldValue }) => fieldValue === 'Yes').map(({ fieldName }) => fieldName)).toEqual(['The ball, Round 12'])
    expect(saved).toHaveLength(34)
  })
})

// A link inside the file has its goal as a destination of its own (ISO 32000-1, 12.3.2.2), read here by another reader.
describe('links inside the file', () => {
  const linksOf = async (bytes: Uint8Array) => {
    const pdf = await openPdf(bytes)
    const pages = await pagesOf(pdf)
    const links = (await Promise.all(pages.map(async (page, at) => (await page.getAnnotations()).filter(({ subtype }) => subtype === 'Link').map((link) => ({ link, at }))))).flat()
    return Promise.all(links.map(async ({ link, at }) => ({ from: at, to: await pdf.getPageIndex(link.dest[0]), words: link.contentsObj.str as string })))
  }

  test('lead from the first use of a word in a part to its meaning', async () => {
    const booklet = fromCollection('bollard-hat')
    const links = await linksOf(await printPattern(booklet))
    const pages = await pagesOf(await openPdf(await printPattern(booklet)))
    const texts = await Promise.all(pages.map(textOf))
    const meanings = texts.findIndex((text) => text.includes('Abbreviations'))
    const words = links.filter(({ words: own }) => own.trim() === 'hdc')
    // Crown and Sides have it in their first rounds; the brim is of raised trebles.
    expect(words.length).toBeGreaterThanOrEqual(2)
    expect(words.every(({ to }) => to === meanings)).toBe(true)
  })

  test('lead from a part to the one that it goes on from', async () => {
    const links = await linksOf(await printPattern(fromCollection('bollard-hat')))
    expect(links.filter(({ words }) => ['Crown', 'Sides'].includes(words.trim()))).toHaveLength(2)
  })

  test('lead from a row of the checklist to the one that it is worked as', async () => {
    const links = await linksOf(await printChecklist(fromCollection('drift-net-runner')))
    expect(links.length).toBeGreaterThan(10)
    expect(links.every(({ words }) => /^as\sRow\s[2-5]$/.test(words.trim()))).toBe(true)
    expect(new Set(links.map(({ to }) => to))).toEqual(new Set([0]))
  })
})

describe('bookmarks', () => {
  test('lead to every section and part', async () => {
    const outline = await (await openPdf(await printPattern(float))).getOutline()
    expect(outline.map(({ title }) => title)).toEqual([
      'Float', 'Materials', 'Gauge', 'Abbreviations', 'How to read a row', '1 The ball', '2 The becket', 'Finishing',
    ])
  })
})
