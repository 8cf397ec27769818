import { defineConfig } from 'astro/config'
import { paperInDev } from './src/build/paper-in-dev.ts'

export default defineConfig({
  // Where the site will stand: canonical addresses are made from it. Set SITE (and BASE for a folder of a host) when publishing.
  site: process.env.SITE ?? 'https://patterns.saltmarsh-yarnworks.example',
  base: process.env.BASE ?? '/',
  output: 'static',
  // Beside the project and not in node_modules, so that a copy of the project has a cache of its own.
  cacheDir: './.astro/cache',
  compressHTML: true,
  devToolbar: { enabled: false },
  // Styles stand in files of their own: the pages forbid inline styles.
  // Several pages at once: while one is written, others are rendered.
  build: { inlineStylesheets: 'never', concurrency: 8 },
  vite: { cacheDir: '.astro/vite', build: { assetsInlineLimit: 0 } },
  integrations: [paperInDev()],
})
