import { useState } from 'react'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { PaperBallot } from '@/app/tasting/seat/paper-ballot.tsx'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { allergensOf } from '@/core/formula/allergens.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { containsText } from '@/core/wording/tasting/before-first-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'

/** Blank ballots to print: a sheet a taster. Drawn first, then printed alone. */
export function PaperBallots() {
  const { whole, session, state } = useTable()
  const [printing, setPrinting] = useState(false)
  const tasters = state.tasters.filter(
    ({ presence, asked }) => presence !== 'declined' && presence !== 'left' && asked.length > 0,
  )
  const contains = containsText(allergensOf(planOfSession(whole, session).formula))
  if (tasters.length === 0) return null
  return (
    <>
      <Button onPress={() => setPrinting(true)}>Print blank ballots</Button>
      {printing ? (
        <Paper onDone={() => setPrinting(false)}>
          {tasters.map(({ tasterId }) => (
            <PaperBallot
              key={tasterId}
              name={tasterName(tasterId, whole.kitchen)}
              view={blindView(whole, session.id, tasterId)}
              contains={contains}
            />
          ))}
        </Paper>
      ) : null}
    </>
  )
}
