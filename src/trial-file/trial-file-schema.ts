import * as z from 'zod/mini'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'
import { trialFileShape } from './trial-file-shape.ts'

/**
 * The trial file's JSON Schema (draft 2020-12), generated from the very shapes that check it. References between records
 * are beyond a schema; reading a file checks them.
 */
export function trialFileSchema(): Record<string, unknown> {
  const named = z.registry<{ id: string }>()
  named.add(idShape, { id: 'id' })
  named.add(atShape, { id: 'moment' })
  const { $schema, ...rest } = z.toJSONSchema(trialFileShape, {
    target: 'draft-2020-12',
    metadata: named,
    io: 'input',
  })
  return {
    $schema,
    title: 'Evenhand trial file',
    description: 'One side-by-side dough trial, whole. docs/trial-file.md tells what it means.',
    ...rest,
  }
}

/** The schema as the text that stands in docs/trial-file.schema.json. */
export function trialFileSchemaText(): string {
  return `${JSON.stringify(trialFileSchema(), null, 2)}\n`
}
