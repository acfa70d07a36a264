import fc from 'fast-check'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { PlanPageContext } from '@/app/plan/page/plan-page-context.ts'
import { createPlanPage } from '@/app/plan/page/plan-page-store.ts'
import { WeighSheetPanel } from '@/app/plan/panels/weigh-sheet-panel.tsx'
import { PrintedWeighSheet } from '@/app/plan/paper/printed-weigh-sheet.tsx'
import { WholeTrialContext } from '@/app/services/use-whole-trial.ts'
import { weighSheetText } from '@/cli/weigh-sheet-text.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { withFactorKind } from '@/core/plan-edits/factor/factor-for-kind.ts'
import { factorKinds } from '@/core/plan-edits/factor/factor-kinds.ts'
import { weightsSection } from '@/core/report/weights-section.ts'
import { toWeigh } from '@/core/session/press/to-weigh.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { sampleTrial } from '../../../cli/sample-file.ts'
import { counting, idOf, planOfTest } from '../../../core/plan-edits/plan-of-test.ts'
import { wholeTrialOf } from '../../../whole-trial-of.ts'

type Row = string[]

const plain = (html: string) =>
  html
    // The percent of the flour stands beside the name.
    .replace(/<small.*?<\/small>/gs, '')
    .replace(/<[^>]*>/g, '')
    .replaceAll('&amp;', '&')
    .replaceAll('&#x27;', "'")

/** The rows of the table that a component shows, its head left out. */
function shownRows(part: React.ReactNode, plan: Plan, kitchen: readonly KitchenThing[]): Row[] {
  const nothing = { keepDrafts: async () => {}, judge: () => [], refuses: () => null }
  const keepPlan = () => Promise.reject(new Error('nothing is kept here'))
  const store = createPlanPage({ plan, trialRevision: 1 }, {}, [...kitchen], {
    ...nothing,
    keepPlan,
  })
  const html = renderToStaticMarkup(
    <WholeTrialContext value={{ ...wholeTrialOf(), sessions: [] }}>
      <PlanPageContext value={store}>{part}</PlanPageContext>
    </WholeTrialContext>,
  )
  return sideBySide([...html.matchAll(/<table.*?<\/table>/gs)].map(([table]) => rowsOf(table)))
}

function rowsOf(table: string): Row[] {
  const [, body = ''] = /<tbody>(.*?)<\/tbody>/s.exec(table) ?? []
  return [...body.matchAll(/<tr.*?<\/tr>/gs)].map(([row]) =>
    [...row.matchAll(/<(?:th|td)[ >].*?<\/(?:th|td)>/gs)].map(([cell]) => plain(cell)),
  )
}

/** The rows of a table put together again where it was too wide for one page. */
const sideBySide = (parts: Row[][]): Row[] =>
  parts.reduce((whole, part) => whole.map((row, at) => [...row, ...(part[at] ?? []).slice(1)]))

/** The rows of a text table. */
function terminalRows(text: string): Row[] {
  const lines = text.split('\n')
  const parts = lines.flatMap((line, at) => {
    if (!/^─+( {2}─+)+$/.test(line)) return []
    const columns = [...line.matchAll(/─+/g)].map((one) => [one.index, one.index + one[0].length])
    const end = lines.indexOf('', at)
    return [
      lines
        .slice(at + 1, end === -1 ? undefined : end)
        .map((row) => columns.map(([from, to]) => row.slice(from, to).trim())),
    ]
  })
  return sideBySide(parts)
}

function reportRows(plan: Plan, kitchen: readonly KitchenThing[]): Row[] {
  const table = weightsSection(plan, kitchen).blocks.find(
    (block) => block.kind === 'table' && block.caption.startsWith('Planned weights'),
  )
  if (table?.kind !== 'table') throw new Error('the report has no table of weights')
  return table.rows.map((row) => row.map(String)).filter(([head]) => !head?.startsWith('Hydration'))
}

/** All five faces of the weigh sheet: four tables, and the bench's lines of every dough. */
function facesAgree(planned: Plan, kitchen: readonly KitchenThing[]): void {
  const plan: Plan = { ...planned, temperature: null }
  const sheet = weighSheet(plan, kitchen)
  const printed = shownRows(<PrintedWeighSheet />, plan, kitchen)
  expect(printed.length).toBeGreaterThan(sheet.rows.length)
  const unwatered = { ok: false, reason: 'no-temperature' } as never
  expect(terminalRows(weighSheetText(plan, sheet, unwatered, []))).toEqual(printed)
  expect(reportRows(plan, kitchen)).toEqual(printed)
  // The page adds, under them, what rides along with the level.
  expect(shownRows(<WeighSheetPanel />, plan, kitchen).slice(0, printed.length)).toEqual(printed)
  const weights = printed.slice(0, sheet.rows.length)
  for (const [at, { levelId }] of sheet.batches.entries()) {
    const lines = toWeigh(sheet, levelId, 'batch', [])
    const ofBatch = weights.flatMap((row) => {
      const text = row[at + 1] ?? ''
      return text === '–' ? [] : [[row[0] ?? '', `${text} g`]]
    })
    expect(lines.map(({ name, text }) => [name, text])).toEqual(ofBatch)
  }
}

test.each(['flatbread-hydration', 'pan-loaf-salt', 'focaccia-hydration'])(
  'the five faces of the weigh sheet of %s say the same',
  (name) => {
    const { plans, kitchen } = sampleTrial(name)
    for (const plan of plans) facesAgree(plan, kitchen)
  },
)

const scale = (resolutionGrams: number): KitchenThing => ({
  ...{ id: `scale-${resolutionGrams}`, kind: 'scale', name: `Scale ${resolutionGrams}` },
  ...{ resolutionGrams, capacityGrams: 3000 * Math.min(1, resolutionGrams * 10) },
})

const generated = fc.record({
  kind: fc.constantFrom(...factorKinds.map(({ kind }) => kind)),
  poolish: fc.boolean(),
  shared: fc.constantFrom(null, 'stock' as const, 'dry-mix' as const),
  steps: fc.subarray([0.01, 0.1, 0.5, 1, 5]),
  flourGrams: fc.integer({ min: 40, max: 4000 }),
})

function planFrom({ kind, poolish, shared, steps, flourGrams }: GeneratedPlan): Plan {
  const newId = counting('new')
  const started = poolish ? withFactorKind(planOfTest(), 'preferment-share', newId) : planOfTest()
  const plan = withFactorKind(started, kind, newId)
  const kept = poolish && kind !== 'preferment-share' ? started.formula.preferments : []
  return {
    ...plan,
    kitchenIds: steps.map((step) => `scale-${step}`),
    sharedDoses: shared ? [{ ingredientId: idOf(plan, 'Instant yeast'), by: shared }] : [],
    formula: {
      ...plan.formula,
      preferments: [...plan.formula.preferments, ...kept],
      batchSize: { by: 'flour', flourGrams },
    },
  }
}

type GeneratedPlan = typeof generated extends fc.Arbitrary<infer Made> ? Made : never

test('so do those of generated plans: any factor, a preferment, a shared dose, any scales', () => {
  fc.assert(
    fc.property(generated, (made) => {
      const plan = planFrom(made)
      // A factor of one's own has no levels yet: there is no dough to weigh.
      fc.pre(plan.levels.length > 0)
      facesAgree(plan, made.steps.map(scale))
    }),
    { numRuns: 60, seed: 11 },
  )
})
