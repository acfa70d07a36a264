// Writes the arrow table into biome.json: keeps every override that is not about arrows, replaces those that are.
import { readFileSync, writeFileSync } from 'node:fs'
import { arrows, overrideOf } from './arrows.mjs'

const path = new URL('../../biome.json', import.meta.url)
const config = JSON.parse(readFileSync(path, 'utf8'))
const others = config.overrides.filter((o) => !o.linter?.rules?.style?.noRestrictedImports)
config.overrides = [...others, ...arrows.map(overrideOf)]
writeFileSync(path, `${JSON.stringify(config, null, 2)}\n`)
