import { readFileSync } from 'node:fs'
import Ajv2020 from 'ajv/dist/2020'
import { expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { findingsSchema, findingsSchemaText } from '@/core/findings/findings-schema.ts'
import { madeUpRows, tableOf } from './score-tables.ts'

it('has its schema in docs as the shape says it now', () => {
  expect(readFileSync('docs/findings.schema.json', 'utf8')).toBe(findingsSchemaText())
})

it('is met by a document, and not by one with a number left out', () => {
  const validate = new Ajv2020({ strict: false }).compile(findingsSchema())
  const rows = madeUpRows({ seed: 3, levels: [60, 65, 70], tasters: 5, sessions: 3 })
  const document = findings(tableOf(rows, { control: 65 }), { seed: 1, resamples: 100 })
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true)
  const [first] = document.responses
  expect(validate({ ...document, responses: [{ ...first, n: undefined }] })).toBe(false)
})
