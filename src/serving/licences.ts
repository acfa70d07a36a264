import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url))

/** Licences of what comes as files and not as bundled code: the typefaces, and what keeps the program for days without a network. */
const beside = {
  'atkinson-hyperlegible-next': '@fontsource-variable/atkinson-hyperlegible-next',
  rokkitt: '@fontsource-variable/rokkitt',
  workbox: 'workbox-core',
}

/** Texts for packages that name their licence and carry no copy of it, by the licence's name. */
const texts: Readonly<Record<string, string>> = {
  Unlicense: 'src/serving/unlicense.txt',
  MIT: 'src/serving/mit.txt',
}

/** Carries the licences that the bundler does not, and completes its list: every package named there with the text of its licence. */
export const licences: Plugin = {
  name: 'licences',
  apply: 'build',
  generateBundle() {
    for (const [name, folder] of Object.entries(beside))
      this.emitFile({
        type: 'asset',
        fileName: `licences/${name}.txt`,
        source: readFileSync(at(`node_modules/${folder}/LICENSE`)),
      })
  },
  writeBundle({ dir }) {
    if (dir === undefined) return
    const file = join(dir, 'licences', 'dependencies.json')
    const listed: { name: string; identifier?: string; text?: string }[] = JSON.parse(
      readFileSync(file, 'utf8'),
    )
    for (const each of listed) {
      if (each.text) continue
      const text = texts[each.identifier ?? '']
      if (text === undefined) this.error(`the licence of ${each.name} has no text`)
      else each.text = readFileSync(at(text), 'utf8')
    }
    writeFileSync(file, `${JSON.stringify(listed, null, 2)}\n`)
  },
}
