import { writeFileSync } from 'node:fs'
import { trialFileSchemaText } from '@/trial-file/trial-file-schema.ts'

/** Writes the JSON Schema of the trial file beside its description, from the shapes that check it. */
export function run(): void {
  writeFileSync('docs/trial-file.schema.json', trialFileSchemaText())
}
