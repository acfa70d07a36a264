import { existsSync, readdirSync, readFileSync } from 'node:fs'
import Ajv2020 from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { trialFileSchema, trialFileSchemaText } from '@/trial-file/trial-file-schema.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const published = new URL('../../docs/trial-file.schema.json', import.meta.url)
const samples = new URL('../../trials/', import.meta.url)
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(trialFileSchema())
const fits = (text: string) => {
  const ok = validate(JSON.parse(text))
  return ok ? [] : validate.errors
}

describe('the published JSON Schema', () => {
  test('F15: docs/trial-file.schema.json is what the shapes give now (npm run schemas renews it)', () => {
    expect(readFileSync(published, 'utf8')).toBe(trialFileSchemaText())
    expect(trialFileSchema().$schema).toBe('https://json-schema.org/draft/2020-12/schema')
  })

  test('F15: a written trial file fits it, one with a stray key, a wrong kind or a wrong version does not', () => {
    const text = writeTrialFile(wholeTrialOf())
    expect(fits(text)).toEqual([])
    expect(fits(text.replace('"seed"', '"sead"'))).not.toEqual([])
    expect(fits(text.replace('"kind": "bake-in"', '"kind": "bake-up"'))).not.toEqual([])
    expect(fits(text.replace(/"version": \d+/, '"version": 999'))).not.toEqual([])
    expect(fits(text.replace('"id": "plan-1"', '"id": "plan 1"'))).not.toEqual([])
  })

  const names = existsSync(samples)
    ? readdirSync(samples).filter((name) => name.endsWith('.json'))
    : []
  test('F15: every sample trial fits it', () => {
    for (const name of names)
      expect(fits(readFileSync(new URL(name, samples), 'utf8')), name).toEqual([])
  })
})
