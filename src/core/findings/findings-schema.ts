import * as z from 'zod/mini'
import { conclusionShape } from '@/core/findings/evidence/conclusion-shape.ts'
import * as rung from '@/core/findings/rungs/rung-shape.ts'
import { findingsDocumentShape } from './findings-document.ts'
import { absentShape } from './reason.ts'
import { responseFindingsShape } from './response-findings-shape.ts'

const named = z.registry<{ id: string }>()
named.add(absentShape, { id: 'absent' })
named.add(rung.levelIdShape, { id: 'levelId' })
named.add(rung.meanShape, { id: 'mean' })
named.add(rung.pairShape, { id: 'pair' })
named.add(rung.againstControlShape, { id: 'againstControl' })
named.add(rung.trendShape, { id: 'trend' })
named.add(rung.fiellerShape, { id: 'fieller' })
named.add(rung.curveShape, { id: 'curve' })
named.add(rung.bestShape, { id: 'best' })
named.add(rung.besideShape, { id: 'beside' })
named.add(rung.rungShape, { id: 'rung' })
named.add(rung.rowsRungShape, { id: 'rowsRung' })
named.add(conclusionShape, { id: 'conclusion' })
named.add(responseFindingsShape, { id: 'response' })

/** The JSON Schema (2020-12) of the machine-readable findings, made from the very shapes that type them. */
export function findingsSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(findingsDocumentShape, {
    target: 'draft-2020-12',
    metadata: named,
  })
  return {
    $schema,
    title: 'Evenhand findings',
    description:
      'What a trial shows: for each response its levels, the rungs of evidence, ranks and verdicts. An absent answer is an object with its reason in its place.',
    ...rest,
  }
}

/** The schema as the text that stands in docs/findings.schema.json. */
export function findingsSchemaText(): string {
  return `${JSON.stringify(findingsSchema(), null, 2)}\n`
}
