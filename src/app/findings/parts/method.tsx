import styles from '@/app/findings/findings.module.css'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { type MethodTopic, methodNotes } from '@/core/wording/findings/method-notes.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'

interface MethodProps {
  /** What it explains, with its verb: "the means were". */
  what: string
  /** A note for every number of the part, each named by it. */
  topics: readonly MethodTopic[]
  /** Numbers that stand behind the words of the part. */
  figures?: readonly string[]
}

/** How the numbers above it were worked out, one press deeper: the numbers behind the words, then each one's method and source. */
export function Method({ what, topics, figures = [] }: MethodProps) {
  return (
    <SideNote label={`How ${what} worked out`}>
      {figures.length > 0 ? (
        <ul className={styles.figures}>
          {figures.map((figure) => (
            <li key={figure}>{boundUnits(figure)}</li>
          ))}
        </ul>
      ) : null}
      {topics.map((topic) => {
        const { title, text, source } = methodNotes[topic]
        return (
          <div key={topic} className={styles.method}>
            <p>
              <b>{title}.</b> {boundUnits(text)}
            </p>
            <p className={styles.source}>{source}</p>
          </div>
        )
      })}
    </SideNote>
  )
}
