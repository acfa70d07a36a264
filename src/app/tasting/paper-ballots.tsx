import { useState } from 'react'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { PaperBallot } from '@/app/tasting/seat/paper-ballot.tsx'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { useTable } from './tasting-context.ts'

/** Blank ballots to print: a sheet a taster. Drawn first, then printed alone. */
export function PaperBallots() {
  const { whole, session, state } = useTable()
  const [printing, setPrinting] = useState(false)
  const tasters = state.tasters.filter(
    ({ presence, asked }) => presence !== 'declined' && presence !== 'left' && asked.length > 0,
  )
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
            />
          ))}
        </Paper>
      ) : null}
    </>
  )
}
