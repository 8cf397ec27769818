import { spawn, type ChildProcess } from 'node:child_process'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { copyProject, plainEnvironment, type ProjectCopy } from '../support/project-copy.ts'

let copy: ProjectCopy
let server: ChildProcess
let origin: string
let said = ''

beforeAll(async () => {
  copy = await copyProject('tests/site/patterns')
  const port = await freePort()
  origin = `http://localhost:${port}`
  const env = { ...plainEnvironment(), ASTRO_DEV_BACKGROUND: '1' }
  // A group of its own, so that npm and the server that it starts end together.
  server = spawn('npm', ['run', 'dev', '--', '--port', String(port)], { cwd: copy.folder, env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] })
  for (const stream of [server.stdout, server.stderr]) stream?.on('data', (bytes: Buffer) => (said += bytes.toString()))
  await until(async () => (await fetch(`${origin}/`)).ok, 60_000)
}, 90_000)

afterAll(async () => {
  const ended = new Promise((resolve) => server.on('close', resolve))
  if (server.pid !== undefined && server.exitCode === null) process.kill(-server.pid, 'SIGTERM')
  await ended
  await copy.remove()
})

test('a page shows what is wrong while a pattern is being written, and mends itself with the file', async () => {
  const file = join(copy.folder, 'patterns/tarpaulin-cap.md')
  const right = readFileSync(file, 'utf8')
  const page = async () => (await fetch(`${origin}/patterns/tarpaulin-cap/`)).text()
  expect(await page()).toContain('Tarpaulin Cap')
  expect(await page()).not.toContain('total-mismatch')

  // 20 (20, 22, 22, 24) is what twos into each stitch of 10 (10, 11, 11, 12) make, worked by hand.
  await saved(file, right.replace('(20 (20, 22, 22, 24))', '(20 (20, 22, 22, 25))'), async () => (await page()).includes('total-mismatch'))
  const broken = await page()
  const line = right.slice(0, right.indexOf('(20 (20, 22, 22, 24))')).split('\n').length
  expect(broken).toContain(`patterns/tarpaulin-cap.md:${line}:`)
  expect(broken).toContain('(20 (20, 22, 22, 25))')
  expect(broken).toContain('/help/total-mismatch/')
  expect(broken, 'the rows stay on the page').toMatch(/2\sdc\sin next/)

  await saved(file, right, async () => (await page()).includes('Tarpaulin Cap') && !(await page()).includes('To mend before this can be published'))
}, 120_000)

test('a file that is no pattern at all has a page that says so, and goes with the file', async () => {
  const file = join(copy.folder, 'patterns/flotsam.md')
  await saved(file, 'Only a thought.\n', async () => (await fetch(`${origin}/patterns/flotsam/`)).ok)
  const page = await (await fetch(`${origin}/patterns/flotsam/`)).text()
  expect(page).toContain('front-matter-missing')
  expect(await (await fetch(`${origin}/`)).text()).toContain('flotsam')
  rmSync(file)
  await until(async () => (await fetch(`${origin}/patterns/flotsam/`)).status === 404)
}, 120_000)

test('the paper is printed when it is asked for', async () => {
  const paper = await fetch(`${origin}/patterns/tarpaulin-cap/tarpaulin-cap-1.1.0.pdf`)
  expect(paper.headers.get('content-type')).toBe('application/pdf')
  expect(Buffer.from(await paper.arrayBuffer()).subarray(0, 5).toString()).toBe('%PDF-')
}, 120_000)

/** Saves a file until it has come about: a save that falls while the watch is still being set up, or so soon behind another that the watch takes them for one, is seen with the next. */
async function saved(file: string, text: string, holds: () => Promise<boolean>): Promise<void> {
  for (let save = 0; save < 3; save += 1) {
    writeFileSync(file, text)
    if (await until(holds, 15_000).then(() => true, () => false)) return
  }
  writeFileSync(file, text)
  await until(holds, 15_000)
}

async function until(holds: () => Promise<boolean>, within = 50_000): Promise<void> {
  const end = Date.now() + within
  for (;;) {
    if (await holds().catch(() => false)) return
    if (Date.now() > end || server.exitCode !== null) throw new Error(`it did not come about within ${within} ms; the server said:\n${said}`)
    await new Promise((resolve) => setTimeout(resolve, 150))
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.on('error', reject).listen(0, () => {
      const found = probe.address()
      probe.close(() => (found && typeof found === 'object' ? resolve(found.port) : reject(new Error('no port'))))
    })
  })
}
