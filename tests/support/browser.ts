import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, readFile, rename, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import chromium, { inflate } from '@sparticuz/chromium'
import { chromium as playwright, type Browser } from 'playwright-core'

/** A browser's program and what the system lacks to run it. */
export interface InstalledBrowser {
  readonly program: string
  /** Folder of the shared libraries that came with the program. */
  readonly libraries: string
  readonly environment: Readonly<Record<string, string>>
}

/** Starts the browser that came with the test packages. A machine needs no browser of its own, nor its libraries, nor fonts. */
export async function startBrowser(): Promise<Browser> {
  const { program, environment } = await installedBrowser()
  // The package's own list of flags runs everything in one process, which dies when a page's context is closed.
  return playwright.launch({ executablePath: program, args: ['--no-sandbox'], env: { ...definedEnvironment(), ...environment } })
}

/** Unpacks the browser once, beside the packages, and looks whether the system has the libraries that it needs. */
export async function installedBrowser(): Promise<InstalledBrowser> {
  const folder = await unpacked()
  const program = join(folder, 'chromium')
  const libraries = join(folder, 'al2023', 'lib')
  return {
    program,
    libraries,
    environment: {
      ...(missingLibraries(program).length > 0 ? { LD_LIBRARY_PATH: libraries } : {}),
      ...(existsSync('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_PATH: join(folder, 'fonts') }),
    },
  }
}

/** Shared libraries that the loader does not find for a program, with the system's own and those of one more folder. */
export function missingLibraries(program: string, libraries?: string): readonly string[] {
  const env = libraries ? { ...process.env, LD_LIBRARY_PATH: libraries } : process.env
  const found = execFileSync('ldd', [program], { encoding: 'utf8', env })
  return found.split('\n').filter((line) => line.includes('not found')).map((line) => line.trim().split(' ')[0] ?? '')
}

/** Unpacks into a folder of its own and then renames it, so that test files that start at the same time do not meet half a browser. */
async function unpacked(): Promise<string> {
  const { version } = JSON.parse(await readFile(join(packageFolder(), 'package.json'), 'utf8')) as { readonly version: string }
  const cache = join(fileURLToPath(new URL('../..', import.meta.url)), 'node_modules', '.cache')
  const folder = join(cache, `browser-${version}`)
  if (existsSync(folder)) return folder
  await mkdir(cache, { recursive: true })
  const fresh = await mkdtemp(join(cache, 'browser-'))
  const temporary = process.env.TMPDIR
  process.env.TMPDIR = fresh
  try {
    await chromium.executablePath()
    await inflate(join(packageFolder(), 'bin', 'al2023.tar.br'))
  } finally {
    if (temporary === undefined) delete process.env.TMPDIR
    else process.env.TMPDIR = temporary
  }
  await rename(fresh, folder).catch((error: unknown) => {
    if (!existsSync(folder)) throw error
    return rm(fresh, { recursive: true })
  })
  return folder
}

function packageFolder(): string {
  return dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')))
}

function definedEnvironment(): Record<string, string> {
  return Object.fromEntries(Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined))
}
