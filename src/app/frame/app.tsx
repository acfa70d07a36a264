import { useLiveQuery } from 'dexie-react-hooks'
import { lazy, Suspense } from 'react'
import { Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { HomePlace } from '@/app/home/home-place.tsx'
import { MannerContext } from '@/app/kit/field/manner-context.ts'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useSeated } from '@/app/kit/page/seated.ts'
import { keepFocus } from '@/app/kit/press/keep-focus.ts'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import styles from './frame.module.css'
import { Header } from './header.tsx'
import { PageTitle } from './page-title.tsx'
import { useArrival } from './use-arrival.ts'
import { useKeptManner } from './use-kept-manner.ts'

const LostPage = lazy(async () => ({ default: (await import('./lost-page.tsx')).LostPage }))
const StartPlace = lazy(async () => ({
  default: (await import('@/app/home/start/start-place.tsx')).StartPlace,
}))
const KitchenPlace = lazy(async () => ({
  default: (await import('@/app/kitchen/kitchen-place.tsx')).KitchenPlace,
}))
/** Fetched behind the first page, and there long before anything of it need be said. */
const StandingNotes = lazy(async () => ({
  default: (await import('./standing-notes.tsx')).StandingNotes,
}))
const HousePlace = lazy(async () => ({
  default: (await import('@/app/house/house-place.tsx')).HousePlace,
}))
const AboutPage = lazy(async () => ({ default: (await import('./about-page.tsx')).AboutPage }))
const ScoresPlace = lazy(async () => ({
  default: (await import('@/app/findings/table/scores-place.tsx')).ScoresPlace,
}))
const TogetherPlace = lazy(async () => ({
  default: (await import('@/app/findings/together/together-place.tsx')).TogetherPlace,
}))
const AtTablePage = lazy(async () => ({
  default: (await import('./at-table-page.tsx')).AtTablePage,
}))
const OwnPlace = lazy(async () => ({ default: (await import('@/app/own/own-place.tsx')).OwnPlace }))
const TablePlace = lazy(async () => ({
  default: (await import('@/app/table/table-place.tsx')).TablePlace,
}))
const JoinPlace = lazy(async () => ({
  default: (await import('@/app/table/join-place.tsx')).JoinPlace,
}))
const HubPlace = lazy(async () => ({
  default: (await import('@/app/table/hub-place.tsx')).HubPlace,
}))
const TrialPage = lazy(async () => ({ default: (await import('./trial-page.tsx')).TrialPage }))

const noLessons: readonly string[] = []

/** The app around its notebook: every address and what stands at it. */
export function App({ services }: { services: Services }) {
  const { notebook } = services
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  const kept = useKeptManner(settings)
  return (
    <ServicesContext value={services}>
      <LessonsContext value={settings?.lessons ?? noLessons}>
        <MannerContext value={kept}>
          <Router hook={useHashLocation}>
            <Shell />
          </Router>
        </MannerContext>
      </LessonsContext>
    </ServicesContext>
  )
}

function Shell() {
  const [location] = useLocation()
  useArrival(location)
  const { trialId: atTable } = useTableDevice()
  const { seated } = useSeated()
  // Sentences that a page keeps are written anew in another manner; the kitchen, where it is chosen, draws its own.
  const figures = Object.values(useManner()).join(' ')
  const opened = location.split('/').slice(0, 3).join('/')
  const away = typeof atTable === 'string' && location !== `/trial/${atTable}/tasting`
  return (
    <div className={styles.shell} ref={keepFocus}>
      {seated ? null : <Header />}
      <Suspense fallback={null}>
        <StandingNotes />
      </Suspense>
      <ErrorBoundary
        key={location === '/kitchen' ? location : `${opened} ${figures}`}
        what="this page"
      >
        <Suspense fallback={<Progress label="Opening the page" done={null} />}>
          {atTable === undefined ? (
            <Progress label="Opening the page" done={null} />
          ) : away ? (
            <AtTablePage trialId={atTable} />
          ) : (
            <Ways />
          )}
        </Suspense>
      </ErrorBoundary>
    </div>
  )
}

/** Every address and what stands at it. */
function Ways() {
  return (
    <Switch>
      <Route path="/">
        <Page title="Notebook">
          <HomePlace />
        </Page>
      </Route>
      <Route path="/new">
        <Page title="New trial">
          <StartPlace />
        </Page>
      </Route>
      <Route path="/kitchen">
        <Page title="Kitchen">
          <KitchenPlace />
        </Page>
      </Route>
      <Route path="/house/:houseId">
        {({ houseId }) => (
          <Page title="House formula">
            <HousePlace houseId={houseId} />
          </Page>
        )}
      </Route>
      <Route path="/scores">
        <Page title="Scores from elsewhere">
          <ScoresPlace />
        </Page>
      </Route>
      <Route path="/together/:chosen?">
        {({ chosen }) => (
          <Page title="Trials together">
            <TogetherPlace chosen={chosen} />
          </Page>
        )}
      </Route>
      <Route path="/about">
        <Page title="About">
          <AboutPage />
        </Page>
      </Route>
      <Route path="/slip/:text?">
        {({ text }) => (
          <Page title="A tasting">
            <OwnPlace text={text} />
          </Page>
        )}
      </Route>
      <Route path="/table/:trialId">
        {({ trialId }) => (
          <Page title="Open table">
            <TablePlace trialId={trialId} />
          </Page>
        )}
      </Route>
      <Route path="/join/:text?">
        {({ text }) => (
          <Page title="At a table">
            <JoinPlace text={text} />
          </Page>
        )}
      </Route>
      <Route path="/hub/:text?">
        {({ text }) => (
          <Page title="The hub">
            <HubPlace text={text} />
          </Page>
        )}
      </Route>
      <Route path="/trial/:trialId/:place/:part?">
        {({ trialId, place }) => <TrialPage trialId={trialId} placeName={place} />}
      </Route>
      <Route>
        <Page title="Nothing here">
          <LostPage />
        </Page>
      </Route>
    </Switch>
  )
}

function Page({ title, children }: { title: string; children: React.ReactNode }) {
  return (
    <main id="page" tabIndex={-1} className={styles.page}>
      <PageTitle parts={[title]} />
      {children}
    </main>
  )
}
