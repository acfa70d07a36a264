import { readFileSync } from 'node:fs'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'

/** A sample trial as its file holds it, checked by its shape; the file's own format name and version are taken off. */
export function sampleTrial(name: string): WholeTrial {
  const {
    format: _,
    version: __,
    ...whole
  } = JSON.parse(readFileSync(`trials/${name}.json`, 'utf8'))
  return wholeTrialShape.parse(whole)
}
