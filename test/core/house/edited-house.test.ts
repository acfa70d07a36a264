import { expect, test } from 'vitest'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { houseChanges } from '@/core/house/changed-house.ts'
import { editedHouse } from '@/core/house/edited-house.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { editedTroubleText } from '@/core/wording/house/edited-text.ts'
import { sampleTrial } from '../../cli/sample-file.ts'

const plan = planInForce(sampleTrial('focaccia-hydration'))
const level = plan.levels[1]
if (!level) throw new Error('the sample has five levels')
const rests = {
  ...{ trialId: 't', question: plan.question, level: '70 %', because: 'picked' as const },
  ...{ sessions: 3, tasters: 8, said: '' },
}
const made = adoptLevel(plan, level, rests, { at: 1_760_000_000_000, zone: 'Europe/Rome' })
if (!made.ok) throw new Error(made.trouble.reason)
const before = made.revision
const idOf = (kind: string) =>
  before.formula.ingredients.find((one) => one.kind === kind)?.id ?? 'none'
const waits = before.steps.find(({ waitSeconds }) => waitSeconds > 0)
if (!waits) throw new Error('a step waits')

test('what is typed over becomes the next state, what is not stays', () => {
  const edited = editedHouse(before, {
    [`percent/${idOf('water')}`]: '72,5',
    [`wait/${waits.id}`]: '1 h 20 min',
    note: ' a thirstier bag ',
  })
  if (!edited.ok) throw new Error('it can stand')
  const { revision } = edited
  expect(revision.formula.ingredients.find(({ id }) => id === idOf('water'))?.percent).toBe(72.5)
  expect(revision.steps.find(({ id }) => id === waits.id)?.waitSeconds).toBe(4800)
  expect(revision.note).toBe('a thirstier bag')
  expect(houseChanges(before, revision)).toEqual(['formula', 'method'])
  expect(editedHouse(before, {})).toEqual({ ok: true, revision: { ...before, note: '' } })
})

test('a field that cannot stand is named with its mend, and nothing is made of it', () => {
  const water = `percent/${idOf('water')}`
  const said = (text: string) => {
    const edited = editedHouse(before, { [water]: text })
    if (edited.ok) throw new Error(`“${text}” was taken`)
    return edited.fields.map((trouble) => [trouble.key, editedTroubleText(trouble)])
  }
  expect(said('wet')).toEqual([[water, 'This is not a number. Write digits, such as 66 or 66.5.']])
  expect(said('1001')).toEqual([[water, 'Write a number from 0 to 1000 %.']])
  expect(said('')).toEqual([[water, 'Write a number, 0 for none.']])
})

test('flours that no longer come to 100 % are refused by the formula itself', () => {
  const edited = editedHouse(before, { [`percent/${idOf('flour')}`]: '20' })
  expect(edited).toMatchObject({ ok: false, fields: [] })
  if (!edited.ok) expect(edited.formula.length).toBeGreaterThan(0)
})
