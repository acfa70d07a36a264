import { describe, expect, test } from 'vitest'
import { dataVersion } from '@/trial-file/data-version.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

type Node = Record<string, unknown>
interface Sound extends Node {
  trial: Node
  plans: [Node & { factor: Node; responses: [Node] }]
  events: Node[]
  kitchen: Node[]
}

/** The sound file's document, and its one plan, for a test to break. */
function documentOf(): Sound & { plan: Sound['plans'][0] } {
  const document: Sound = JSON.parse(writeTrialFile(wholeTrialOf()))
  const [plan] = document.plans
  return Object.defineProperty({ ...document, plan }, 'plan', { enumerable: false })
}
const read = (document: unknown) => readTrialFile(JSON.stringify(document))
const troubles = (document: unknown) => {
  const result = read(document)
  return result.ok ? [] : result.troubles
}

describe('reading a trial file', () => {
  test.each([[null], [[]], [{}], ['evenhand-trial'], [{ format: 'recipe', version: 1 }], [7]])(
    'F1: %j is no trial file',
    (document) => {
      expect(troubles(document)).toEqual([{ reason: 'not-a-trial-file' }])
    },
  )

  test('F2: a file cut short is refused where it ends', () => {
    const text = writeTrialFile(wholeTrialOf()).slice(0, 200)
    const lines = text.split('\n')
    expect(readTrialFile(text)).toMatchObject({
      ok: false,
      troubles: [
        { reason: 'not-json', line: lines.length, column: (lines.at(-1) ?? '').length + 1 },
      ],
    })
  })

  test('F3: a byte order mark in front is passed over', () => {
    expect(readTrialFile(`\ufeff${writeTrialFile(wholeTrialOf())}`).ok).toBe(true)
  })

  test('F4: a newer version is refused by its number, whatever else it holds', () => {
    expect(troubles({ format: 'evenhand-trial', version: 999, stars: [] })).toEqual([
      { reason: 'newer-version', found: 999, known: dataVersion },
    ])
  })

  test.each([[0], [1.5], ['1'], [null]])('F4: version %j is no version', (version) => {
    expect(troubles({ ...documentOf(), version })).toEqual([
      {
        reason: 'shape',
        pointer: '/version',
        expected: 'a whole number from 1 up',
        found: JSON.stringify(version),
      },
    ])
  })

  test('F5: every trouble of the shape is named at once by its place, what was expected and what was found', () => {
    const document = documentOf()
    document.trial.seed = '7'
    document.trial.createdAt = 1.5
    document.trial.zone = ''
    document.plan.factor.splitsAt = 'lunch'
    document.plan.factor.acts = { on: 'weather' }
    document.plan.responses[0].margin = 0
    document.plan.flights = 0
    document.plan.question = '   '
    document.plan.tellApart = { test: 'paired', levelIds: ['level-1'] }
    document.plan.id = 'plan 1'
    Object.assign(document.events[0] ?? {}, { kind: 'sneeze' })
    document.ballots = {}
    Reflect.deleteProperty(document.kitchen[0] ?? {}, 'lot')
    const found = troubles(document)
    const at = (pointer: string) =>
      found.find((each) => 'pointer' in each && each.pointer === pointer)
    expect(at('/trial/seed')).toMatchObject({ expected: 'a number', found: '"7"' })
    expect(at('/trial/createdAt')).toMatchObject({ expected: 'a whole number', found: '1.5' })
    expect(at('/trial/zone')).toMatchObject({
      expected: 'text of at least 1 characters',
      found: '""',
    })
    expect(at('/plans/0/factor/splitsAt')).toMatchObject({
      expected: 'one of "mix", "divide", "proof", "oven"',
      found: '"lunch"',
    })
    expect(at('/plans/0/factor/acts/on')).toMatchObject({
      expected: expect.stringContaining('"hydration"'),
      found: '"weather"',
    })
    expect(at('/plans/0/responses/0/margin')).toMatchObject({
      expected: 'a number above 0',
      found: '0',
    })
    expect(at('/plans/0/flights')).toMatchObject({ expected: 'a number at least 1', found: '0' })
    expect(at('/plans/0/question')).toMatchObject({ expected: 'text that is not blank' })
    expect(at('/plans/0/tellApart/levelIds')).toMatchObject({
      expected: 'a list of exactly 2',
      found: 'a list of 1',
    })
    expect(at('/plans/0/id')).toMatchObject({
      expected: 'an id of 1 to 64 letters, digits, - and _',
      found: '"plan 1"',
    })
    expect(at('/events/0/kind')).toMatchObject({ found: '"sneeze"' })
    expect(at('/ballots')).toMatchObject({ expected: 'a list', found: 'an object' })
    expect(at('/kitchen/0/lot')).toMatchObject({ expected: 'text', found: 'nothing' })
    expect(found).toHaveLength(13)
  })

  test('F5: the first fifty troubles are enough', () => {
    const document = documentOf()
    document.events = Array.from({ length: 80 }, () => ({}))
    expect(troubles(document)).toHaveLength(50)
  })

  test('F6: unknown keys are refused by name, however deep', () => {
    const document = documentOf()
    document.stars = 5
    document.plan.factor['a/b~c'] = 1
    expect(troubles(document)).toEqual([
      {
        reason: 'shape',
        pointer: '/plans/0/factor/a~1b~0c',
        expected: 'no such key',
        found: '"a/b~c"',
      },
      { reason: 'shape', pointer: '/stars', expected: 'no such key', found: '"stars"' },
    ])
  })

  test('F7: a reference that names nothing is refused by its place and the name', () => {
    const document = documentOf()
    document.trial.planId = 'plan-9'
    expect(troubles(document)).toContainEqual({
      reason: 'reference',
      pointer: '/trial/planId',
      names: 'plan-9',
    })
  })

  test('F18: a trial that says it follows itself is refused', () => {
    const document = documentOf()
    document.trial.follows = { trialId: document.trial.id, how: 'repeats' }
    expect(troubles(document)).toEqual([
      { reason: 'reference', pointer: '/trial/follows/trialId', names: document.trial.id },
    ])
  })

  test('F10: absent means the key is missing: null in the place of an absent key is refused', () => {
    const document = documentOf()
    document.trial.archivedAt = null
    expect(troubles(document)).toEqual([
      { reason: 'shape', pointer: '/trial/archivedAt', expected: 'a number', found: 'null' },
    ])
  })

  test('F5: a number past all bounds is named as such', () => {
    const text = writeTrialFile(wholeTrialOf()).replace('"value": 66.4', '"value": 1e999')
    expect(readTrialFile(text)).toMatchObject({
      troubles: [{ pointer: '/plans/0/levels/0/value', found: 'a number too large' }],
    })
  })
})
