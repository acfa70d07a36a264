// Bundles a TypeScript entry for Node when one of the files it was made of has changed. Node 20 cannot run .ts by itself,
// and a bundle starts faster than any loader. Used by the command line, the sample generator, schemas, pictures and speed runs.
const {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} = require('node:fs')
const { join } = require('node:path')

const root = join(__dirname, '..', '..')
const cache = join(root, 'node_modules', '.cache', 'evenhand')
/** A replaced bundle stays this long, for a process that has not loaded its last part yet. */
const staysMilliseconds = 600_000

const changedAt = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Infinity

/** What is known of the last bundle: where it is, when its making began, and which files went into it. */
function lastBundle(card) {
  if (!existsSync(card)) return undefined
  const { bundle, begunAt, inputs } = JSON.parse(readFileSync(card, 'utf8'))
  return existsSync(bundle) && inputs.every((path) => changedAt(path) < begunAt)
    ? bundle
    : undefined
}

/** The path of a bundle of `entry`, itself a path from the project root. */
async function bundleOf(entry) {
  const name = entry.replaceAll(/[/\\]/g, '-').replace(/\.tsx?$/, '')
  const card = join(cache, `${name}.json`)
  return lastBundle(card) ?? madeAnew(entry, name, card)
}

async function madeAnew(entry, name, card) {
  const begunAt = Date.now()
  const folder = join(cache, `${name}@${begunAt}-${process.pid}`)
  const inputs = await build(entry, folder)
  const bundle = join(folder, 'entry.cjs')
  // Written aside and renamed, so that a process starting meanwhile reads a whole card.
  const aside = join(folder, 'card.json')
  writeFileSync(aside, JSON.stringify({ bundle, begunAt, inputs }))
  renameSync(aside, card)
  removeReplaced(name, begunAt)
  return bundle
}

/** Writes a finished bundle in ASCII, which is read in half the time and half the memory of UTF-8. */
const inAscii = {
  name: 'in-ascii',
  generateBundle(_, files) {
    for (const file of Object.values(files))
      if (file.type === 'chunk') file.code = file.code.replaceAll(/[^\0-\x7f]/g, escaped)
  },
}

const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`

/** Bundles, and names the files of the project that went in. */
async function build(entry, folder) {
  const { build: bundled } = await import('vite')
  mkdirSync(folder, { recursive: true })
  const packageFile = join(root, 'package.json')
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8'))
  const { output } = await bundled({
    root,
    configFile: false,
    logLevel: 'error',
    resolve: { alias: { '@': join(root, 'src'), debug: join(__dirname, 'no-debug.cjs') } },
    define: { __APP_VERSION__: JSON.stringify(version) },
    plugins: [inAscii],
    ssr: { noExternal: true, external: ['vite', 'playwright-core'] },
    build: {
      ssr: join(root, entry),
      outDir: folder,
      target: 'node20',
      minify: true,
      rollupOptions: {
        output: { format: 'cjs', entryFileNames: 'entry.cjs', codeSplitting: false },
      },
    },
  })
  const modules = output.flatMap((chunk) => (chunk.type === 'chunk' ? chunk.moduleIds : []))
  const own = modules.filter((path) => path.startsWith(root) && !path.includes('node_modules'))
  return [...own, __filename, packageFile, join(root, 'package-lock.json')]
}

function removeReplaced(name, now) {
  for (const each of readdirSync(cache)) {
    const madeAt = Number(each.match(/@(\d+)-\d+$/)?.[1])
    if (each.startsWith(`${name}@`) && madeAt < now - staysMilliseconds)
      rmSync(join(cache, each), { recursive: true, force: true })
  }
}

module.exports = { bundleOf }
