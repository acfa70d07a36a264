import { useLiveQuery } from 'dexie-react-hooks'
import { Suspense } from 'react'
import { ErrorBoundary } from '@/app/kit/error-boundary.tsx'
import { Progress } from '@/app/kit/progress.tsx'
import { useServices } from '@/app/services/services.ts'
import styles from './frame.module.css'
import { LostPage } from './lost-page.tsx'
import { PageTitle } from './page-title.tsx'
import { trialPlaces } from './places.tsx'
import { trialCover } from './trial-cover.ts'
import { TrialHead } from './trial-head.tsx'

/** One place of one trial: the trial's head with its rail, then the place itself. */
export function TrialPage({ trialId, placeName }: { trialId: string; placeName: string }) {
  const { notebook } = useServices()
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
  const cover = trialCover(found.whole, place.name)
  return (
    <>
      <PageTitle parts={[place.title, cover.title]} />
      <TrialHead whole={found.whole} cover={cover} placeName={place.name} />
      <main id="page" tabIndex={-1} className={`${styles.page} ${styles.placePage}`}>
        <ErrorBoundary key={`${trialId}/${place.name}`} what={`the ${place.title} page`}>
          <Suspense fallback={<Progress label={`Opening ${place.title}`} done={null} />}>
            <place.View trialId={trialId} />
          </Suspense>
        </ErrorBoundary>
      </main>
    </>
  )
}
