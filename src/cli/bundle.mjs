// Bundles a TypeScript entry for Node when a source is newer than its bundle. Node 20 cannot run .ts by itself,
// and a bundle starts faster than any loader. Used by the command line, the sample generator, schemas, pictures and speed runs.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { basename, join, relative } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const cache = join(root, 'node_modules', '.cache', 'evenhand')

function version() {
  return JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version
}

function newestIn(folder) {
  let newest = 0
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name)
    const changed = entry.isDirectory() ? newestIn(path) : statSync(path).mtimeMs
    if (changed > newest) newest = changed
  }
  return newest
}

function isFresh(bundle, watched) {
  if (!existsSync(bundle)) return false
  const made = statSync(bundle).mtimeMs
  return watched.every((folder) => newestIn(folder) < made)
}

/**
 * The address of a bundle of `entry` (a path from the project root), made anew only when something in `watched`
 * (folders from the project root) has changed since.
 */
export async function bundleOf(entry, watched) {
  const name = basename(entry).replace(/\.tsx?$/, '')
  const folder = join(
    cache,
    `${name}-${createHash('sha256').update(entry).digest('hex').slice(0, 8)}`,
  )
  const bundle = join(folder, `${name}.mjs`)
  const folders = [...watched.map((each) => join(root, each)), join(root, 'src', 'cli')]
  if (!isFresh(bundle, folders)) {
    const { build } = await import('vite')
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      resolve: { alias: { '@': join(root, 'src') } },
      define: { __APP_VERSION__: JSON.stringify(version()) },
      ssr: { noExternal: true, external: ['vite', 'playwright-core'] },
      build: {
        ssr: join(root, entry),
        outDir: relative(root, folder),
        emptyOutDir: true,
        target: 'node20',
        minify: false,
        rollupOptions: { output: { entryFileNames: `${name}.mjs`, chunkFileNames: '[name].mjs' } },
      },
    })
  }
  return pathToFileURL(bundle).href
}
