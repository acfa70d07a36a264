import { SideNote } from '@/app/kit/side-note.tsx'
import { type MethodTopic, methodNotes } from '@/core/wording/method-notes.ts'
import styles from './findings.module.css'

/** How the numbers beside it were worked out, one press deeper, with the source. */
export function Method({ topics }: { topics: readonly MethodTopic[] }) {
  return (
    <SideNote label="How this was worked out">
      {topics.map((topic) => {
        const { title, text, source } = methodNotes[topic]
        return (
          <div key={topic} className={styles.method}>
            <p>
              <b>{title}.</b> {text}
            </p>
            <p className={styles.source}>{source}</p>
          </div>
        )
      })}
    </SideNote>
  )
}
