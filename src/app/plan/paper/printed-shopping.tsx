import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { shoppingTotals } from '@/core/weighing/shopping-totals.ts'

/** What to buy: each ingredient over all batches of a session and over all planned sessions. */
export function PrintedShopping() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const several = plan.plannedSessions > 1
  const one = { key: 'session', head: several ? 'One session' : 'The session' }
  const rows = shoppingTotals(plan, kitchen).map((row) => ({
    key: `${row.ingredientId} ${row.name}`,
    head: row.name,
    cells: [row.sessionGrams, ...(several ? [row.totalGrams] : [])].map(gramsWords),
  }))
  return (
    <>
      <h1>To buy</h1>
      <p>{plan.question} Dusting flour, oil for tubs and toppings come on top.</p>
      <LedgerTable
        caption="Grams"
        columns={
          several ? [one, { key: 'all', head: `All ${plan.plannedSessions} planned` }] : [one]
        }
        rows={rows}
      />
    </>
  )
}

const gramsWords = (grams: number) => decimalText(grams, grams < 10 ? 2 : 0)
