// Writes the table of arrows as a Biome configuration of its own, which biome.json extends: what people write stands there.
import { writeFileSync } from 'node:fs'
import { arrows, overrideOf } from './arrows.mjs'

const path = new URL('arrows.biome.json', import.meta.url)
const config = { overrides: arrows.map(overrideOf) }
writeFileSync(path, `${JSON.stringify(config, null, 2)}\n`)
