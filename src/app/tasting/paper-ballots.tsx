import { useState } from 'react'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { blindView } from '@/core/tasting/blind-view.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { tellApartQuestion } from '@/core/wording/plan/tell-apart-question.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import styles from './paper-ballots.module.css'
import { PaperQuestion } from './paper-question.tsx'
import { useTable } from './tasting-context.ts'

/** Blank ballots to print: a sheet a taster, codes in their own order, nothing of a level. Drawn first, then printed alone. */
export function PaperBallots() {
  const { whole, session, state } = useTable()
  const [printing, setPrinting] = useState(false)
  const tasters = state.tasters.filter(
    ({ presence, asked }) => presence !== 'declined' && presence !== 'left' && asked.length > 0,
  )
  if (tasters.length === 0) return null
  const { tellApart } = planOfSession(whole, session)
  return (
    <>
      <Button onPress={() => setPrinting(true)}>Print blank ballots</Button>
      {printing ? (
        <Paper onDone={() => setPrinting(false)}>
          {tasters.map(({ tasterId }) => {
            const view = blindView(whole, session.id, tasterId)
            return (
              <section key={tasterId} className={styles.sheet}>
                <h1 className={styles.name}>
                  {tasterName(tasterId, whole.kitchen)}
                  <span className={styles.session}>Session {session.number}</span>
                </h1>
                {view.warmUpCode === null ? null : (
                  <p>{view.warmUpCode} comes first, to warm up; it is not scored.</p>
                )}
                {view.servings.map(({ code }) => (
                  <div key={code} className={styles.serving}>
                    <h2 className={styles.code}>{code}</h2>
                    {view.questions.map((question) => (
                      <PaperQuestion key={question.responseId} question={question} />
                    ))}
                  </div>
                ))}
                {view.sets.map(({ codes }) => (
                  <div key={codes.join()} className={styles.serving}>
                    <h2 className={styles.code}>{codes.join('   ')}</h2>
                    <p>{tellApart ? tellApartQuestion(tellApart) : null} Ring one code.</p>
                  </div>
                ))}
              </section>
            )
          })}
        </Paper>
      ) : null}
    </>
  )
}
