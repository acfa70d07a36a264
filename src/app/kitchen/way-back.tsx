import { useLiveQuery } from 'dexie-react-hooks'
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

/** The one way back to the place of a trial one came from; nothing where the trial is gone. What is covered there is here too. */
export function WayBack({ trialId, place }: CameFrom) {
  const { notebook } = useServices()
  const whole = useLiveQuery(() => notebook.wholeTrial(trialId), [notebook, trialId])
  if (!whole) return null
  const { title } = trialCover(planInForce(whole), whole, place, false)
  return (
    <div className={styles.back}>
      <LinkButton href={`#/trial/${trialId}/${place}`} kind="quiet">
        Back to the {place} of “{shortenedText(title, mostLetters)}”
      </LinkButton>
    </div>
  )
}
