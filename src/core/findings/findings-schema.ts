import * as z from 'zod/mini'
import { findingsDocumentShape } from './findings-document.ts'

/** The JSON Schema (2020-12) of the machine-readable findings, from the very shape that types them. */
export function findingsSchema(): z.core.JSONSchema.BaseSchema {
  return {
    title: 'Evenhand findings',
    ...z.toJSONSchema(findingsDocumentShape, { target: 'draft-2020-12' }),
  }
}
