import { writeFileSync } from 'node:fs'
import { findingsSchemaText } from '@/core/findings/findings-schema.ts'
import { trialFileSchemaText } from '@/trial-file/trial-file-schema.ts'

/** Writes the JSON Schemas of the trial file and of the machine-readable findings, from the shapes that check them. */
export function run(): void {
  writeFileSync('docs/trial-file.schema.json', trialFileSchemaText())
  writeFileSync('docs/findings.schema.json', findingsSchemaText())
}
