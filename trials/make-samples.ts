import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeSample } from './sample.ts'
import { samples } from './samples.ts'

/** Writes the sample trials beside this script, the same bytes every time. */
export function run(): void {
  for (const sample of samples) {
    const path = join('trials', `${sample.name}.json`)
    writeFileSync(path, writeTrialFile(wholeSample(sample)))
    console.log(path)
  }
}
