import { useLiveQuery } from 'dexie-react-hooks'
import type { ReactNode } from 'react'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { trialCover } from '@/core/seal/trial-cover.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { shortenedText } from '@/core/wording/words/shortened-text.ts'
import styles from './kitchen.module.css'

/** The place of a trial that somebody came from, as it stands in the kitchen's address, where a reload finds it again. */
export interface CameFrom {
  trialId: string
  place: string
}

/** So much of a question stands in one line of a desk, in two of a phone. */
const mostLetters = 60

/** The one way back: to the place of the trial one came from, to the notebook where one came from none or its trial is gone. What is covered there is here too. */
export function WayBack({ from }: { from: CameFrom | null }) {
  const { notebook } = useServices()
  const whole = useLiveQuery(
    async () => (from ? ((await notebook.wholeTrial(from.trialId)) ?? null) : null),
    [notebook, from?.trialId],
  )
  // Until it is read nothing leads elsewhere than it says.
  if (from && whole === undefined) return null
  if (!from || !whole) return <Back href="#/">Back to the notebook</Back>
  const { title } = trialCover(planInForce(whole), whole, from.place, false)
  return (
    <Back href={`#/trial/${from.trialId}/${from.place}`}>
      Back to the {from.place} of “{shortenedText(title, mostLetters)}”
    </Back>
  )
}

function Back({ href, children }: { href: string; children: ReactNode }) {
  return (
    <div className={styles.back}>
      <LinkButton href={href} kind="quiet">
        {children}
      </LinkButton>
    </div>
  )
}
