import type { BlindServing, BlindView } from '@/core/seal/blind/blind-view.ts'
import { refreshText } from '@/core/wording/tasting/before-first-text.ts'
import { rankingOnPaper, rankingQuestion } from '@/core/wording/tasting/ranking-text.ts'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'
import styles from './paper-ballots.module.css'
import { PaperQuestion } from './paper-question.tsx'

interface PaperBallotProps {
  name: string
  view: BlindView
  /** What the servings hold, in one sentence. */
  contains: string
}

/** A4 and Letter leave some 240 mm for codes; a question takes 8 mm, a code 8 more. */
const roomMillimetres = 240
const rowMillimetres = 8

/** One taster's blank ballots: codes in their own order, as many on a sheet as fit, nothing of a level. Who and which page stand on each. */
export function PaperBallot({ name, view, contains }: PaperBallotProps) {
  const perServing = rowMillimetres * (view.questions.length + 1)
  const perPage = Math.max(1, Math.floor(roomMillimetres / perServing))
  const pages = pagesOf(view.servings, perPage)
  const last = pages.length - 1
  return pages.map((servings, page) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
    <section key={page} className={styles.sheet}>
      <h1 className={styles.name}>
        {name}
        <span className={styles.session}>
          Session {view.sessionNumber}, page {page + 1} of {pages.length}
        </span>
      </h1>
      {page === 0 ? (
        <p className={styles.rule}>
          Taste in this order. Ring one number in each row; a row may be left out. {refreshText}{' '}
          {view.warmUpCode === null
            ? ''
            : `${view.warmUpCode} comes first, to warm up; it is not scored. `}
          {contains} Tell the host of any allergy.
        </p>
      ) : null}
      {servings.map(({ code, position }) => (
        <div key={code} className={styles.serving}>
          <div>
            <h2 className={styles.code}>{code}</h2>
            <span className={styles.place}>
              {position} of {view.servings.length}
            </span>
          </div>
          <div>
            {view.questions.map((question) => (
              <PaperQuestion key={question.responseId} question={question} />
            ))}
            <p className={styles.note}>Note</p>
          </div>
        </div>
      ))}
      {page === last ? <AtTheEnd view={view} /> : null}
    </section>
  ))
}

function pagesOf(servings: readonly BlindServing[], perPage: number): BlindServing[][] {
  const count = Math.max(1, Math.ceil(servings.length / perPage))
  return Array.from({ length: count }, (_, page) =>
    servings.slice(page * perPage, (page + 1) * perPage),
  )
}

/** The order, sets to tell apart, and the guess of the usual one. */
function AtTheEnd({ view }: { view: BlindView }) {
  return (
    <>
      {view.ranking ? (
        <div className={styles.set}>
          <p>
            <b>{rankingQuestion(view.ranking)}</b> {rankingOnPaper(view.ranking)}
          </p>
          <p className={styles.note}>First</p>
        </div>
      ) : null}
      {view.sets.map(({ codes }) => (
        <div key={codes.join()} className={styles.set}>
          <h2 className={styles.code}>{codes.join('   ')}</h2>
          <p>{view.tellApart ? tellApartQuestion(view.tellApart) : null} Ring one code.</p>
        </div>
      ))}
      {view.guess ? (
        <p className={styles.note}>Which code was the usual one? (or: no idea)</p>
      ) : null}
    </>
  )
}
