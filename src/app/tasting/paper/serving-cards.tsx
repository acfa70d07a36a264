import { useState } from 'react'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import look from '@/app/tasting/seat/paper-ballots.module.css'
import { beginsFlight } from '@/app/tasting/seat/sheet-pages.ts'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { alikeOnPlates, warmUpText } from '@/core/wording/tasting/before-first-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'

/** Rested servings: a card for each taster with their codes in order, and how every serving is cut and offered alike. */
export function ServingCards() {
  const { whole, session, state } = useTable()
  const [printing, setPrinting] = useState(false)
  const plan = planOfSession(whole, session)
  const tasters = state.tasters.filter(
    ({ presence, asked }) => presence !== 'declined' && presence !== 'left' && asked.length > 0,
  )
  if (plan.serving !== 'rested' || tasters.length === 0) return null
  return (
    <>
      <Button onPress={() => setPrinting(true)}>Print serving cards</Button>
      {printing ? (
        <Paper onDone={() => setPrinting(false)}>
          {tasters.map(({ tasterId }) => {
            const view = blindView(whole, session.id, tasterId)
            return (
              <section key={tasterId} className={look.card}>
                <h1 className={look.name}>
                  {tasterName(tasterId, whole.kitchen)}
                  <span className={look.session}>Serving card, session {session.number}</span>
                </h1>
                {view.warmUpCode === null ? null : <p>{warmUpText(view.warmUpCode)}</p>}
                <ol className={look.codes}>
                  {view.servings.map(({ code, flight }, at) => (
                    <li key={code}>
                      <b>{code}</b>
                      {beginsFlight(view.servings, at) ? ` flight ${flight}` : ''}
                    </li>
                  ))}
                  {view.sets.map(({ codes }) => (
                    <li key={codes.join()}>
                      <b>{codes.join(' · ')}</b> together, from left to right
                    </li>
                  ))}
                </ol>
                <p className={look.rule}>{alikeOnPlates(plan.servingRule)}</p>
              </section>
            )
          })}
        </Paper>
      ) : null}
    </>
  )
}
