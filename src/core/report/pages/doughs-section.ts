import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { ReportBlock, ReportSection } from '@/core/report/report-block.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { manner } from '@/core/units/manner.ts'
import { massFigure, massUnit } from '@/core/units/mass-text.ts'
import { decimalText, plainNumber, shortUnit } from '@/core/units/number-text.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { workedInSession } from '@/core/whole-trial/worked-in-session.ts'
import { levelShort, levelText } from '@/core/wording/words/level-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { type WeighedCell, type WeighedSheet, weighedByLevel } from './weighed-by-level.ts'

/** The doughs: the formula in a line, and the weigh sheet as it was weighed, one column a dough. */
export function doughsSection(whole: WholeTrial): ReportSection {
  const plan = planInForce(whole)
  const blocks: ReportBlock[] = [{ kind: 'facts', rows: formulaFacts(plan) }]
  blocks.push(sheetTable(whole, plan, weighedByLevel(whole, manner())))
  return { id: 'page-doughs', title: 'The doughs', blocks }
}

/** The whole formula and each preferment, as "Flour 100, water 66 to 82, salt 2.2". */
function formulaFacts(plan: Plan): { term: string; text: string }[] {
  const made = plan.levels.flatMap((level) => {
    const moved = formulaAtLevel(plan, level)
    return moved.ok ? [moved.formula] : []
  })
  const formulas = made.length > 0 ? made : [plan.formula]
  const [first] = formulas
  const preferments = first ? formulaViews(first).preferments : []
  return [
    {
      term: 'Formula, % of all flour',
      text: percentsText(formulas, (formula) => formulaViews(formula).overall),
    },
    ...preferments.map(({ name }, at) => ({
      term: `${name}, % of its flour`,
      text: percentsText(formulas, (formula) => formulaViews(formula).preferments[at]?.rows ?? []),
    })),
  ]
}

type Percents = readonly { name: string; percent: number | null }[]

/** Every ingredient with its percent, or from the least to the most over the levels. */
function percentsText(
  formulas: readonly Formula[],
  rowsOf: (formula: Formula) => Percents,
): string {
  const all = formulas.map(rowsOf)
  const names = [...new Set(all.flatMap((rows) => rows.map(({ name }) => name)))]
  return names
    .map((name) => {
      const percents = all.flatMap((rows) => rows.find((row) => row.name === name)?.percent ?? [])
      if (percents.length === 0) return name
      const [least, most] = [Math.min(...percents), Math.max(...percents)].map(shown)
      return least === most ? `${name} ${least}` : `${name} ${least} to ${most}`
    })
    .join(', ')
}

const shown = (percent: number) => plainNumber(Math.round(percent * 100) / 100)

function sheetTable(whole: WholeTrial, plan: Plan, sheet: WeighedSheet): ReportBlock {
  const unit = shortUnit(plan.factor.unitOfMeasure)
  const cells = sheet.rows.flatMap((row) => row.cells.flatMap((cell) => cell ?? []))
  const logged = cells.some(({ weighedGrams }) => weighedGrams !== null)
  const sessions = Math.max(0, ...cells.map((cell) => cell.sessions))
  const heads = sheet.levelIds.map((id) => {
    const level = plan.levels.find((each) => each.id === id)
    if (!level) return 'all levels'
    return unit === '%' ? levelText(level, unit) : levelShort(level)
  })
  const written = logged
    ? `as weighed${sessions > 1 ? `, mean of ${countText(sessions, 'session')}` : ''}; in brackets as planned`
    : 'as planned; no weight was logged'
  return {
    kind: 'table',
    caption: `Weigh sheet, ${massUnit()}: ${written}`,
    head: ['What', ...heads],
    rows: [
      ...sheet.rows.map(({ name, cells: row }) => [
        name,
        ...row.map((cell) => cellText(cell, logged)),
      ]),
      ...workedRows(whole, sheet),
    ],
    figures: [false, ...heads.map(() => true)],
  }
}

function cellText(cell: WeighedCell | null, logged: boolean): string {
  if (!cell) return '–'
  if (cell.weighedGrams !== null) return massFigure(cell.weighedGrams, cell.decimals)
  return logged ? `(${cell.plannedText})` : cell.plannedText
}

/** The level that the weights made and that the doughs had once handled, each the mean of the sessions. */
function workedRows(whole: WholeTrial, { levelIds }: WeighedSheet): string[][] {
  const worked = whole.sessions.flatMap((session) => workedInSession(whole, session))
  const row = (head: string, of: 'weighed' | 'handled') => {
    const means = levelIds.map((id) => {
      const values = worked.flatMap((one) => (one.levelId === id ? (one[of] ?? []) : []))
      return values.length === 0 ? null : values.reduce((sum, one) => sum + one, 0) / values.length
    })
    return means.some((mean) => mean !== null)
      ? [[head, ...means.map((mean) => (mean === null ? '–' : decimalText(mean, 1)))]]
      : []
  }
  return [...row('Level by these weights', 'weighed'), ...row('Level as handled', 'handled')]
}
