import { useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { tellApartQuestion } from '@/core/wording/plan/tell-apart-question.ts'
import { arriveAt } from './arrive-at.ts'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'

/** A tell-apart set: its codes, one pick, sealed at once. */
export function SetForm({ tasterId, codes }: { tasterId: string; codes: readonly string[] }) {
  const { notebook, now } = useServices()
  const { whole, session } = useTable()
  const [startedAt] = useState(now)
  const [picked, setPicked] = useState<string | null>(null)
  const { tellApart } = planOfSession(whole, session)
  const set = session.dealt.sets.find(
    (each) =>
      each.tasterId === tasterId && each.samples.map(({ code }) => code).join() === codes.join(),
  )
  const offered = tellApart?.test === 'duo-trio' ? codes.slice(1) : codes
  const seal = async () => {
    if (!set || picked === null) return
    await notebook.sealBallot({
      trialId: whole.trial.id,
      sessionId: session.id,
      tasterId,
      startedAt,
      about: { kind: 'set', id: set.id },
      answers: [],
      pickedCode: picked,
    })
  }
  return (
    <div className={styles.ballot}>
      <p className={styles.code} tabIndex={-1} ref={arriveAt}>
        {codes.join(' · ')}
      </p>
      {tellApart ? <p className={styles.lead}>{tellApartQuestion(tellApart)}</p> : null}
      <div className={styles.seats}>
        {offered.map((code) => (
          <Button
            key={code}
            size="bench"
            kind={picked === code ? 'primary' : 'plain'}
            pressed={picked === code}
            onPress={() => setPicked(code)}
          >
            {code}
          </Button>
        ))}
      </div>
      <Button kind="primary" size="bench" disabled={picked === null} onPress={seal}>
        Seal this answer
      </Button>
    </div>
  )
}
