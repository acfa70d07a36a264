import { useState } from 'react'
import { Button } from '@/app/kit/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import styles from './tasting.module.css'
import { useTable } from './tasting-context.ts'

const asks = {
  triangle: 'Two of these are alike. Which one is different?',
  'duo-trio': 'Which of the last two is like the first?',
  paired: 'Which of the two has more of it? Pick one, also if you have to guess.',
} as const

/** A tell-apart set: its codes, one pick, sealed at once. */
export function SetForm({ tasterId, codes }: { tasterId: string; codes: readonly string[] }) {
  const { notebook, now } = useServices()
  const { whole, session } = useTable()
  const [startedAt] = useState(now)
  const [picked, setPicked] = useState<string | null>(null)
  const test = planOfSession(whole, session).tellApart?.test ?? 'triangle'
  const set = session.dealt.sets.find(
    (each) =>
      each.tasterId === tasterId && each.samples.map(({ code }) => code).join() === codes.join(),
  )
  const offered = test === 'duo-trio' ? codes.slice(1) : codes
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
      <p className={styles.code}>{codes.join(' · ')}</p>
      <p className={styles.lead}>{asks[test]}</p>
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
