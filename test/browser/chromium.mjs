// Finds, or where it can installs, a Chromium-family browser for the tests. Needs playwright-core only.
import { execFileSync, spawnSync } from 'node:child_process'
import { accessSync, constants, readFileSync, realpathSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
]

const runnable = (p) => {
  try {
    accessSync(p, constants.X_OK)
    return true
  } catch {
    return false
  }
}
// A path that exists may still be a stub (Ubuntu's snap shim): ask it for its version.
const answers = (p) => {
  const r = spawnSync(p, ['--no-sandbox', '--headless', '--version'], {
    encoding: 'utf8',
    timeout: 20_000,
  })
  return r.status === 0 && /\d+\.\d+/.test(r.stdout ?? '')
}
const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(':')
    .filter(Boolean)
    .map((d) => join(d, name))
    .find(runnable)

async function playwrightOwn() {
  try {
    const { chromium } = await import('playwright-core')
    const p = chromium.executablePath() // path it WOULD use; may not exist
    return p && runnable(p) ? p : undefined
  } catch {
    return undefined
  }
}

/** @returns {Promise<{path: string, source: string} | undefined>} */
export async function findChromium() {
  const fromEnv = process.env.CHROMIUM_PATH
  if (fromEnv) {
    if (!runnable(fromEnv) || !answers(fromEnv))
      throw new Error(`CHROMIUM_PATH=${fromEnv} does not run`)
    return { path: fromEnv, source: 'CHROMIUM_PATH' }
  }
  const own = await playwrightOwn()
  if (own && answers(own)) return { path: own, source: 'playwright cache' }
  // The shell opens a page in a third of the time: it carries no windows, tabs and toolbars.
  for (const n of [
    'chromium-headless-shell',
    'chromium',
    'chromium-browser',
    'google-chrome-stable',
    'google-chrome',
    'microsoft-edge',
  ]) {
    const p = onPath(n)
    if (p && answers(p)) return { path: p, source: 'PATH' }
  }
  for (const p of [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ])
    if (runnable(p) && answers(p)) return { path: p, source: 'macOS app' }
  return undefined
}

const debianLike = () => {
  try {
    return /^(ID|ID_LIKE)=.*debian/m.test(readFileSync('/etc/os-release', 'utf8'))
  } catch {
    return false
  }
}

export async function ensureChromium({ log = console.error } = {}) {
  const found = await findChromium()
  if (found) return found
  const root = process.getuid?.() === 0
  const run = (cmd, args, env = {}) => {
    log(`[chromium] ${cmd} ${args.join(' ')}`)
    return (
      spawnSync(cmd, args, { stdio: ['ignore', 2, 2], env: { ...process.env, ...env } }).status ===
      0
    )
  }
  if (root && debianLike()) {
    const env = { DEBIAN_FRONTEND: 'noninteractive' }
    const lock = ['-o', 'DPkg::Lock::Timeout=600', '-o', 'Acquire::Retries=3']
    run('apt-get', [...lock, 'update', '-q'], env)
    const install = (name) =>
      run(
        'apt-get',
        [...lock, 'install', '-y', '-q', '--no-install-recommends', name, 'fonts-dejavu-core'],
        env,
      )
    if (!install('chromium-headless-shell')) install('chromium')
  }
  const afterApt = await findChromium()
  if (afterApt) return afterApt
  const cli = join(
    dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')),
    'cli.js',
  )
  run(process.execPath, [cli, 'install', ...(root ? ['--with-deps'] : []), 'chromium'])
  const afterPw = await findChromium()
  if (afterPw) return afterPw
  throw new Error(
    'No Chromium found or installable. Install one (Debian: apt-get install chromium-headless-shell; elsewhere: npx playwright-core install chromium) or set CHROMIUM_PATH.',
  )
}

const isMain = process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)
if (isMain) void ensureChromium().then(say, refuse)

function refuse({ message }) {
  console.error(message)
  process.exitCode = 1
}

function say({ path, source }) {
  const v = execFileSync(path, ['--no-sandbox', '--version'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  }).trim()
  console.log(`${path} (${source}) ${v}`)
}
