import { SideNote } from '@/app/kit/page/side-note.tsx'
import styles from './kitchen.module.css'

/** The trials something was learned from, each a way to it. */
export function LearnedTrials({
  trialIds,
  questions,
  about,
}: {
  trialIds: readonly string[]
  questions: ReadonlyMap<string, string>
  /** Tells these trials apart from another list of them for those who do not see the place. */
  about: string
}) {
  return (
    <SideNote label={`Where from: ${about}`}>
      <ul className={styles.from}>
        {trialIds.map((id) => (
          <li key={id}>
            <a href={`#/trial/${id}/plan`}>{questions.get(id) || 'a trial without a question'}</a>
          </li>
        ))}
      </ul>
    </SideNote>
  )
}
