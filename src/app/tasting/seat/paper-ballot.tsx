import { type CSSProperties, Fragment } from 'react'
import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { refreshText } from '@/core/wording/tasting/before-first-text.ts'
import { rankingOnPaper, rankingQuestion } from '@/core/wording/tasting/ranking-text.ts'
import { referencesEaten } from '@/core/wording/tasting/reference-text.ts'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'
import styles from './paper-ballots.module.css'
import { PaperQuestion } from './paper-question.tsx'
import { beginsFlight, comparedWith, sheetPages } from './sheet-pages.ts'

interface PaperBallotProps {
  name: string
  view: BlindView
  /** What the servings hold, in one sentence. */
  contains: string
}

/** One taster's blank ballots: codes in their own order, as many on a sheet as fit, nothing of a level. Who and which page stand on each. */
export function PaperBallot({ name, view, contains }: PaperBallotProps) {
  const { pages, rowMillimetres, noteLine } = sheetPages(view)
  const flights = new Set(view.servings.map(({ flight }) => flight)).size
  const last = pages.length - 1
  const compare = comparedWith(view)
  const row = { '--row': `${rowMillimetres}mm` } as CSSProperties
  return pages.map((servings, page) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
    <section key={page} className={styles.sheet} style={row}>
      <h1 className={styles.name}>
        {name}
        <span className={styles.session}>
          Session {view.sessionNumber}, page {page + 1} of {pages.length}
        </span>
      </h1>
      {page === 0 ? (
        <p className={styles.rule}>
          Taste in this order.{' '}
          {view.questions.length > 0 ? 'Ring one number in each row; a row may be left out. ' : ''}
          {refreshText}{' '}
          {view.warmUpCode === null
            ? ''
            : `${view.warmUpCode} comes first, to warm up; it is not scored. `}
          {contains} {compare.length > 0 ? `${referencesEaten} ` : ''}Tell the host of any allergy.
          {compare.map(({ name, text }) => (
            <Fragment key={name}>
              <br />
              {name}. {text}
            </Fragment>
          ))}
        </p>
      ) : null}
      {servings.map(({ code, position, flight }) => (
        <Fragment key={code}>
          {beginsFlight(view.servings, position - 1) ? (
            <h2 className={styles.flight}>
              Flight {flight} of {flights}
            </h2>
          ) : null}
          <div className={styles.serving}>
            <div>
              <h2 className={styles.code}>{code}</h2>
              <span className={styles.place}>
                {position} of {view.servings.length}
                {noteLine ? '' : ' · Note'}
              </span>
            </div>
            <div>
              {view.questions.map((question) => (
                <PaperQuestion key={question.responseId} question={question} />
              ))}
              {noteLine ? <p className={styles.note}>Note</p> : null}
            </div>
          </div>
        </Fragment>
      ))}
      {page === last ? <AtTheEnd view={view} /> : null}
    </section>
  ))
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
