import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'
import { contentPolicy } from './src/serving/content-policy.ts'
import { keptProgram } from './src/serving/kept-program.ts'
import { licences } from './src/serving/licences.ts'

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const { version } = JSON.parse(readFileSync(at('./package.json'), 'utf8'))

/**
 * The workers that compute are built with the page and out of the same pieces, so that what both need, the statistics
 * first of all, is shipped once. In development the addresses stay as they are written.
 */
const sharedWorkers: Plugin = {
  name: 'shared-workers',
  apply: 'build',
  enforce: 'pre',
  transform: {
    filter: { id: /\/src\/app\/worker\/open-worker\.ts$/ },
    handler(code) {
      const addresses = /new URL\('\.\/([a-z-]+)\.ts', import\.meta\.url\)/g
      return code.replaceAll(addresses, (_, name: string) => {
        const id = at(`./src/app/worker/${name}.ts`)
        return `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id, name })}`
      })
    },
  },
}

/** Where a module comes from: its package (of a family the family), or the room of the source it stands in. */
function roomOf(moduleId: string): string {
  const packaged = moduleId.split(/\/node_modules\/@?/).at(-1)
  if (packaged !== undefined && packaged !== moduleId) return packaged.split('/')[0] ?? packaged
  const [, own] = moduleId.split('/src/')
  return own ? own.split('/').slice(0, -1).slice(0, 2).join('-') : 'runtime'
}

/** A piece that several parts share is named after what it holds most of; a page, a worker or a lone file after itself. */
function chunkName({ name, facadeModuleId, moduleIds }: ChunkOfName): string {
  if (facadeModuleId || moduleIds.length < 2) return name
  const counts = new Map<string, number>()
  for (const room of moduleIds.map(roomOf)) counts.set(room, (counts.get(room) ?? 0) + 1)
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? name
}

interface ChunkOfName {
  name: string
  facadeModuleId?: string | null
  moduleIds: string[]
}

/** Most kilobytes (1000 bytes, packed) that the first page may take: the entry with all it imports at once. */
const budget = { script: 135, style: 20, fonts: 75 }

const firstLoadBudget: Plugin = {
  name: 'first-load-budget',
  apply: 'build',
  writeBundle(_, bundle) {
    const scripts = new Set<string>()
    const styles = new Set<string>()
    const visit = (fileName: string) => {
      const chunk = bundle[fileName]
      if (chunk?.type !== 'chunk' || scripts.has(fileName)) return
      scripts.add(fileName)
      for (const css of chunk.viteMetadata?.importedCss ?? []) styles.add(css)
      for (const next of chunk.imports) visit(next)
    }
    for (const chunk of Object.values(bundle))
      if (chunk.type === 'chunk' && chunk.facadeModuleId?.endsWith('index.html'))
        visit(chunk.fileName)

    const packed = (fileName: string) => {
      const file = bundle[fileName]
      if (!file) throw new Error(`no ${fileName} in the bundle`)
      return gzipSync(file.type === 'chunk' ? file.code : file.source).length / 1000
    }
    const sum = (names: Iterable<string>) =>
      Array.from(names).reduce((total, name) => total + packed(name), 0)
    const sizes = {
      script: sum(scripts),
      style: sum(styles),
      fonts: sum(Object.keys(bundle).filter((name) => name.endsWith('.woff2'))),
    }
    const line = (part: keyof typeof budget) =>
      `${part} ${sizes[part].toFixed(1)} of ${budget[part]} kB`
    console.log(`first load, gz: ${line('script')}, ${line('style')}, ${line('fonts')}`)
    const over = (['script', 'style', 'fonts'] as const).filter(
      (part) => sizes[part] > budget[part],
    )
    if (over.length > 0)
      this.error(`The first load is past its budget: ${over.map(line).join(', ')}.`)
  },
}

export default defineConfig({
  base: './',
  // Places have their addresses behind the #: any other path is no page, and is answered as such.
  appType: 'mpa',
  publicDir: at('./src/app/frame/public'),
  plugins: [react(), sharedWorkers, contentPolicy, licences, firstLoadBudget, keptProgram],
  resolve: { alias: { '@': at('./src') } },
  define: { __APP_VERSION__: JSON.stringify(version) },
  build: {
    license: { fileName: 'licences/dependencies.json' },
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    assetsInlineLimit: 0,
    // A place that is opened brings its styles ahead; its script is fetched as it is met, since a link for each of its forty pieces held a frame.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files, { hostType }) =>
        hostType === 'html' ? files : files.filter((file) => file.endsWith('.css')),
    },
    rollupOptions: {
      output: { chunkFileNames: (chunk) => `assets/${chunkName(chunk)}-[hash].js` },
    },
  },
  worker: { format: 'es' },
  preview: { host: '127.0.0.1' },
})
