import { existsSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { codes } from '../src/diagnostics/codes.ts'
import { checksOf, editorsList, notCheckedByMachine, type EditorsCheck } from '../src/diagnostics/editors-list.ts'

// What editors look at, gathered from published checklists of the trade before there was any code, and numbered 1 to 95. For each the
// gathering said whether a machine can decide it (A), suspect it (S), or a person has to look (H).
const tags = 'HSASSSAASAAAAASSAAASAAAAAAAASASAAAAAAAAAAAAAAAAAAAAAASAAAAAAAAAAAASAAAASASHAAHAAAASSSSSSSAAAAAA'
const letter = { machine: 'A', suspicion: 'S', person: 'H' }

/** What is wrong with the list, in words. */
function faults(list: readonly EditorsCheck[]): string[] {
  if (list.length === 0) return ['there is no list']
  return list.flatMap(({ number, by, codes: told, heldBy }, index) => [
    ...(number === index + 1 ? [] : [`${number} stands in place ${index + 1}`]),
    ...(letter[by] === tags[index] ? [] : [`${number} is done by ${by}`]),
    ...told.filter((code) => !(code in codes)).map((code) => `${number} names ${code}, which is no code`),
    ...told.filter((code) => !existsSync(`src/help/${code}.md`)).map((code) => `${number} names ${code}, which has no page`),
    ...(by === 'person' && told.length > 0 ? [`${number} is for a person and has a code`] : []),
    ...(by !== 'person' && told.length === 0 && heldBy === undefined ? [`${number} has no code`] : []),
    ...(by === 'suspicion' && heldBy !== undefined ? [`${number} is suspected by nothing`] : []),
    ...(heldBy !== undefined && !existsSync(heldBy) ? [`${number} is held by ${heldBy}, which is not there`] : []),
  ])
}

test('what a machine decides or suspects has a code with a page, and what is for a person has none', () => {
  expect(editorsList).toHaveLength(tags.length)
  expect(faults(editorsList)).toEqual([])
})

test('what the product itself keeps to is only how pages and papers come out', () => {
  expect(editorsList.filter(({ heldBy }) => heldBy !== undefined).map(({ number }) => number)).toEqual([90, 91, 92, 93, 94, 95])
  for (const { heldBy } of editorsList) if (heldBy !== undefined) expect(readFileSync(heldBy, 'utf8'), heldBy).toMatch(/\btest\(|describe\(/)
})

test('what stays with a person is listed for the report', () => {
  expect(notCheckedByMachine.map(({ number }) => number)).toEqual([...tags].flatMap((tag, index) => (tag === 'H' ? [index + 1] : [])))
})

test('codes that tell of nothing on the list are about reading the file', () => {
  const apart = Object.keys(codes).filter((code) => checksOf(code as keyof typeof codes).length === 0)
  expect(apart.filter((code) => !/^(?:file|front-matter|key|rows-not|fabric|count-reference|accept|pattern-)/.test(code))).toEqual([])
})

test('the list can fail', () => {
  const one = editorsList[2]!
  expect(faults([])).toHaveLength(1)
  expect(faults([{ ...editorsList[0]!, by: 'machine' }])).toEqual(['1 is done by machine', '1 has no code'])
  expect(faults([editorsList[0]!, editorsList[1]!, { ...one, codes: [] }])).toEqual(['3 has no code'])
  expect(faults([editorsList[0]!, editorsList[1]!, { ...one, codes: ['made-up' as keyof typeof codes] }])).toHaveLength(2)
})
