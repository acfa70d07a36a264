import { Suspense, useContext, useMemo, useState } from 'react'
import { useHashLocation } from 'wouter/use-hash-location'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { LateView, lateComponent } from '@/app/kit/page/late-view.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { useMenuOfPage } from '@/app/kit/page/page-menu.ts'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useSeated } from '@/app/kit/page/seated.ts'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import { useOpenTables } from '@/app/services/open-tables.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { WholeTrialProvider } from '@/app/services/whole-trial-provider.tsx'
import { coveredTrials } from '@/core/lesson/covered-trials.ts'
import { levelsUnknown, sealOf } from '@/core/seal/sealed.ts'
import { trialCover } from '@/core/seal/trial-cover.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import styles from './frame.module.css'
import { HelpingPage } from './helping-page.tsx'
import { LostPage } from './lost-page.tsx'
import { PageTitle } from './page-title.tsx'
import { lessonPlace, type PlaceName, placeNames } from './place-names.ts'
import { placeNamed } from './places.tsx'
import { TrialHead, TrialRail } from './trial-head.tsx'
import { useFindingsAhead } from './use-findings-ahead.ts'

/** Places that show more than the ballots while a tasting is sealed, for a baker who does not taste. */
const uncoverable: ReadonlySet<string> = new Set(['plan', 'bench'])

const opening = <Progress label="Opening the page" done={null} />

/** Loaded when a tasting is sealed: the first screen does without it. */
const CoveredPage = lateComponent(
  async () => (await import('./covered-page.tsx')).CoveredPage,
  opening,
)
const LessonCover = lateComponent(
  async () => (await import('@/app/kit/page/lesson-cover.tsx')).LessonCover,
  opening,
)
/** Loaded where a table is open and its plan elsewhere. */
const PlanElsewhere = lateComponent(
  async () => (await import('@/app/table/plan-elsewhere.tsx')).PlanElsewhere,
  opening,
)

/** Places read what they need from the trial around them. */
const nothing = {}

/** Places that say what was found. */
const answers: ReadonlySet<string> = new Set(['findings', 'report'])

interface TrialPageProps {
  trialId: string
  placeName: string
}

/** One place of one trial, read once for everything on the page; or what stands where there is no such trial or place. */
export function TrialPage({ trialId, placeName }: TrialPageProps) {
  const place = [...placeNames, lessonPlace].find(({ name }) => name === placeName)
  if (!place) return <Lost trial={false} />
  return (
    <WholeTrialProvider
      key={trialId}
      trialId={trialId}
      waiting={<Progress label="Opening the trial" done={null} />}
      missing={<Lost trial />}
    >
      <TablePress trialId={trialId} />
      <PlaceOrHelp place={place} trialId={trialId} />
    </WholeTrialProvider>
  )
}

/** A helper's device works the bench of a trial that is kept on another, and its plan where it was handed over; every other place is there. */
function PlaceOrHelp({ place, trialId }: { place: PlaceName; trialId: string }) {
  const helps = useOpenTables()?.helps.has(trialId) ?? false
  return helps && place.name !== 'bench' && place.name !== 'plan' ? (
    <HelpingPage trialId={trialId} />
  ) : (
    <PlacePage place={place} />
  )
}

/** The way to the open table of a trial, in the one menu; none on a device that lies before the tasters. */
function TablePress({ trialId }: { trialId: string }) {
  const [, navigate] = useHashLocation()
  const tables = useOpenTables()
  const lies = useTableDevice().trialId !== null
  const { seated } = useSeated()
  const helps = tables?.helps.has(trialId) ?? false
  const own = tables?.own.has(trialId) ?? false
  const shown = tables !== undefined && !lies && !seated
  const groups = useMemo(
    () =>
      shown
        ? [
            [
              {
                words: helps || own ? 'The open table' : 'Open a table',
                act: () => navigate(helps ? '/join' : `/table/${trialId}`),
              },
            ],
          ]
        : [],
    [shown, helps, own, navigate, trialId],
  )
  useMenuOfPage(groups)
  return null
}

function Lost({ trial }: { trial: boolean }) {
  return (
    <main id="page" tabIndex={-1} className={styles.page}>
      <LostPage trial={trial} />
    </main>
  )
}

/**
 * The trial's head with its rail, then the place itself, or its cover while a tasting is sealed. A lifted cover shows Plan
 * and Bench alone: where people taste, and where findings would stand, it stays.
 */
function PlacePage({ place }: { place: PlaceName }) {
  const whole = useWholeTrial()
  const { id } = whole.trial
  const uncovered = useUncoveredTrial()
  const { seated } = useSeated()
  const [works, setWorks] = useState(false)
  const mayLook = uncoverable.has(place.name)
  const cover = trialCover(
    planInForce(whole),
    whole,
    place.name,
    mayLook && uncovered.trialId === id,
  )
  const isBench = place.name === 'bench'
  const tables = useOpenTables()
  const helps = tables?.helps.has(id) ?? false
  const planElsewhere =
    place.name === 'plan' && (helps ? !tables?.planHere.has(id) : tables?.planAway.has(id))
  // The bench has a head and a rail of its own, with letters alone while the codes are kept.
  // Where only cups are shuffled nobody tastes yet: the bench is at work.
  const shuffled = cover.sealed.filter((session) => levelsUnknown(session, whole.events))
  const atWork =
    shuffled.length > 0 && cover.sealed.every(({ id }) => sealOf(whole, id) === 'not-begun')
  const covers =
    cover.sealed.length > 0 && place.name !== 'tasting' && !(isBench && (works || atWork))
  const lessons = useContext(LessonsContext)
  const inLesson = answers.has(place.name) && coveredTrials([id], lessons).length > 0
  const atBench = isBench && whole.sessions.length > 0 && !covers
  useFindingsAhead(whole, place.name)
  return (
    <>
      <PageTitle parts={[place.title, cover.tabTitle]} />
      {seated || atBench ? null : (
        <>
          <TrialHead whole={whole} cover={cover} placeName={place.name} />
          <TrialRail whole={whole} cover={cover} placeName={place.name} />
        </>
      )}
      <main
        id="page"
        ref={guardPresses}
        tabIndex={-1}
        className={
          seated ? '' : `${styles.page} ${styles.placePage} ${atBench ? styles.benchPage : ''}`
        }
      >
        <ErrorBoundary key={place.name} what={`the ${place.title} page`}>
          <Suspense fallback={<Progress label={`Opening ${place.title}`} done={null} />}>
            {covers ? (
              <CoveredPage
                whole={whole}
                sealed={cover.sealed}
                place={place}
                atWork={atWork}
                onUncover={mayLook && shuffled.length === 0 ? () => uncovered.uncover(id) : null}
                onWork={isBench ? () => setWorks(true) : null}
              />
            ) : inLesson ? (
              <LessonCover trialId={id} title={place.title} />
            ) : planElsewhere ? (
              <PlanElsewhere trialId={id} own={!helps} />
            ) : (
              <LateView
                part={placeNamed(place.name)}
                props={nothing}
                waiting={<Progress label={`Opening ${place.title}`} done={null} />}
              />
            )}
          </Suspense>
        </ErrorBoundary>
      </main>
    </>
  )
}
