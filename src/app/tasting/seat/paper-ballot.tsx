import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'
import styles from './paper-ballots.module.css'
import { PaperQuestion } from './paper-question.tsx'

/** One taster's blank ballots on a sheet: codes in their own order, nothing of a level. */
export function PaperBallot({ name, view }: { name: string; view: BlindView }) {
  return (
    <section className={styles.sheet}>
      <h1 className={styles.name}>
        {name}
        <span className={styles.session}>Session {view.sessionNumber}</span>
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
          <p>{view.tellApart ? tellApartQuestion(view.tellApart) : null} Ring one code.</p>
        </div>
      ))}
    </section>
  )
}
