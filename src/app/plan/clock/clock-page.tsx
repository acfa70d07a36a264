import { useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import type { DayFound } from '@/app/worker/clock-worker.ts'
import { whoseHands } from '@/core/clock-plan/whose-hands.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { calendarFile } from '@/core/wording/plan/calendar-file.ts'
import { beforeTheDay, dayMoments, daySentence } from '@/core/wording/plan/clock-day-text.ts'
import { byHelperText, runRowText } from '@/core/wording/plan/run-sheet-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { ClockFigure } from './clock-figure.tsx'
import styles from './clock-page.module.css'
import { DayVerdict } from './day-verdict.tsx'
import { DayWishesFields } from './day-wishes-fields.tsx'
import { useDayFound } from './found-day.tsx'
import { OtherDays } from './other-days.tsx'
import { PrintedClock } from './printed-clock.tsx'
import { PrintedRunSheet } from './printed-run-sheet.tsx'
import { WaitsTable } from './waits-table.tsx'

/** The next session's day by the clock, as a page of its own. */
export function ClockPage({ back }: { back: string }) {
  const found = useDayFound()
  return (
    <div className={styles.page}>
      <div className={styles.title}>
        <PageHeading>The day, by the clock</PageHeading>
        <LinkButton href={back}>Back to the plan</LinkButton>
      </div>
      {found.state === 'found' ? (
        <Day {...found} />
      ) : (
        <p role="status">
          {found.state === 'undealt'
            ? 'As soon as a session can be dealt from the plan, its day stands here.'
            : found.state === 'failed'
              ? 'The day could not be worked out. Load the page anew; nothing of the plan is lost.'
              : 'Laying the day…'}
        </p>
      )}
    </div>
  )
}

interface DayProps {
  plan: Plan
  session: Session
  day: DayFound
  searching: boolean
}

function Day({ plan, session, day, searching }: DayProps) {
  const { now } = useServices()
  const [paper, setPaper] = useState<'clock' | 'run' | null>(null)
  const moments = dayMoments(day.originAt, plan.zone)
  const sentence = daySentence(day, plan)
  const busySeconds = day.picture.hands.reduce(
    (sum, each) => sum + each.toSeconds - each.fromSeconds,
    0,
  )
  const saveCalendar = (originAt: number) =>
    saveFile(
      'trial-day.ics',
      calendarFile({
        ...{ trialId: plan.trialId, session: session.number, question: plan.question },
        ...{ rows: day.rows, originAt, writtenAt: now() },
      }),
      'text/calendar',
    )
  const { originAt } = day
  const hands = whoseHands(day.rows, plan, originAt)
  return (
    <>
      <p className={styles.sentence}>{sentence}</p>
      <Fold name="Other times" result={wishesText(plan)} startsOpen={plan.day?.fixed === undefined}>
        <DayWishesFields plan={plan} />
      </Fold>
      <ErrorBoundary what="days that differ in kind" of={plan}>
        <OtherDays plan={plan} session={session} />
      </ErrorBoundary>
      <div
        role="img"
        aria-label={`${sentence} The waits and the run sheet below say the same in words.`}
      >
        <ClockFigure picture={day.picture} levels={plan.levels} moments={moments} />
      </div>
      <DayVerdict day={day} plan={plan} session={session} searching={searching} />
      <div className={styles.presses}>
        <Button onPress={() => setPaper('clock')}>Print the day</Button>
        <Button onPress={() => setPaper('run')}>Print the run sheet</Button>
        {originAt === null ? null : (
          <Button onPress={() => saveCalendar(originAt)}>Save for a calendar, with alarms</Button>
        )}
      </div>
      <div className={styles.columns}>
        <div>
          <WaitsTable waits={day.waits} />
          {day.ages.length > 0 ? (
            <section aria-label="What it does to fairness">
              <h2>What it does to fairness</h2>
              <ul className={styles.list}>
                {day.ages.map((item) => {
                  const { title, sentence: says } = fairnessText(item, plan)
                  return (
                    <li key={item.key}>
                      <b>{title}.</b> {says}
                    </li>
                  )
                })}
              </ul>
            </section>
          ) : null}
          <section aria-label="Before the day">
            <h2>Before the day</h2>
            <ul className={styles.list}>
              {beforeTheDay(plan, session.batches.length).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        </div>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">By hands, busy {durationText(busySeconds)}</th>
              <th scope="col" className={styles.figure}>
                what
              </th>
            </tr>
          </thead>
          <tbody>
            {day.rows.map((row, at) => {
              const today = moments.day(row.beginSeconds)
              const before = day.rows[at - 1]
              const turns = today !== '' && (!before || moments.day(before.beginSeconds) !== today)
              return (
                <tr key={row.id}>
                  <th scope="row">
                    {turns ? `${today} ` : ''}
                    {moments.time(row.beginSeconds)}
                  </th>
                  <td className={styles.figure}>
                    {[
                      runRowText(row),
                      row.endSeconds > row.beginSeconds
                        ? durationText(row.endSeconds - row.beginSeconds)
                        : '',
                      byHelperText(hands.get(row.id)),
                    ]
                      .filter(Boolean)
                      .join(', ')}
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
      {paper === null ? null : (
        <Paper onDone={() => setPaper(null)} look={paper === 'clock' ? styles.acrossPaper : ''}>
          {paper === 'clock' ? (
            <PrintedClock day={day} plan={plan} session={session} />
          ) : (
            <PrintedRunSheet day={day} plan={plan} session={session} />
          )}
        </Paper>
      )}
    </>
  )
}

function wishesText({ day }: Plan): string {
  if (!day?.fixed) return 'without a date, from the first hand on'
  const from = day.fixed.what === 'eat' ? 'back from when we eat' : 'on from when I start'
  const night = day.quiet ? ', nobody works at night' : ''
  const helps = day.helpers?.length ? `, ${day.helpers.length} helping by the hour` : ''
  return `${from}${night}${helps}`
}
