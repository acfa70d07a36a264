import { useLiveQuery } from 'dexie-react-hooks'
import { Suspense } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useUncoveredTrial } from '@/app/kit/page/uncovered-trial.ts'
import { useServices } from '@/app/services/services.ts'
import { CoveredPage } from './covered-page.tsx'
import styles from './frame.module.css'
import { LostPage } from './lost-page.tsx'
import { PageTitle } from './page-title.tsx'
import { trialPlaces } from './places.tsx'
import { trialCover } from './trial-cover.ts'
import { TrialHead } from './trial-head.tsx'

/** Places that show more than the ballots while a tasting is sealed, for a baker who does not taste. */
const uncoverable: ReadonlySet<string> = new Set(['plan', 'bench'])

/**
 * One place of one trial: the trial's head with its rail, then the place itself, or its cover while a tasting is sealed.
 * A lifted cover shows Plan and Bench alone: where people taste, and where findings would stand, it stays.
 */
export function TrialPage({ trialId, placeName }: { trialId: string; placeName: string }) {
  const { notebook } = useServices()
  const here = `${trialId}/${placeName}`
  const uncovered = useUncoveredTrial()
  const found = useLiveQuery(
    async () => ({ whole: await notebook.wholeTrial(trialId) }),
    [notebook, trialId],
  )
  const place = trialPlaces.find((candidate) => candidate.name === placeName)
  if (!found) return <Progress label="Opening the trial" done={null} />
  if (!found.whole || !place)
    return (
      <main id="page" tabIndex={-1} className={styles.page}>
        <LostPage trial={!found.whole} />
      </main>
    )
  const mayLook = uncoverable.has(place.name)
  const cover = trialCover(found.whole, place.name, mayLook && uncovered.trialId === trialId)
  return (
    <>
      <PageTitle parts={[place.title, cover.tabTitle]} />
      <TrialHead whole={found.whole} cover={cover} placeName={place.name} />
      <main id="page" tabIndex={-1} className={`${styles.page} ${styles.placePage}`}>
        <ErrorBoundary key={here} what={`the ${place.title} page`}>
          <Suspense fallback={<Progress label={`Opening ${place.title}`} done={null} />}>
            {cover.sealed.length > 0 && place.name !== 'tasting' ? (
              <CoveredPage
                whole={found.whole}
                sealed={cover.sealed}
                title={place.title}
                onUncover={mayLook ? () => uncovered.uncover(trialId) : null}
              />
            ) : (
              <place.View trialId={trialId} />
            )}
          </Suspense>
        </ErrorBoundary>
      </main>
    </>
  )
}
