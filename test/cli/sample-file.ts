import { readFileSync } from 'node:fs'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

export const samplePath = (name: string) => `trials/${name}.json`

/** A sample as plain JSON, to be broken on purpose. */
export function sampleJson(name: string) {
  return JSON.parse(readFileSync(samplePath(name), 'utf8'))
}

export function sampleTrial(name: string) {
  const read = readTrialFile(readFileSync(samplePath(name), 'utf8'))
  if (!read.ok) throw new Error(`${name} is no trial file`)
  return read.whole
}
