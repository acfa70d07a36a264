import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { massName, roundedMass } from '@/core/units/mass-text.ts'
import { prefermentsToFeed } from '@/core/weighing/preferments-to-feed.ts'
import { shoppingTotals } from '@/core/weighing/shopping-totals.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'

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
  const fed = prefermentsToFeed(plan)
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
      {fed.map(({ prefermentId, name, rows: parts, totalGrams }) => (
        <LedgerTable
          key={prefermentId}
          caption={`${name}, as it is fed for all doughs of a session; its flour and water stand in the list`}
          columns={[{ key: 'grams', head: asSentenceStart(massName()) }]}
          rows={[
            ...parts.map((part) => ({
              ...{ key: part.ingredientId, head: part.name, cells: [gramsWords(part.grams)] },
            })),
            { key: 'all', head: 'In all', cells: [gramsWords(totalGrams)] },
          ]}
        />
      ))}
    </>
  )
}

const gramsWords = (grams: number) => roundedMass(grams, grams < 10 ? 2 : 0)
