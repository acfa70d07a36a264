import { useLiveQuery } from 'dexie-react-hooks'
import { Suspense } from 'react'
import { Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { HomePlace } from '@/app/home/home-place.tsx'
import { MannerContext } from '@/app/kit/field/manner-context.ts'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useSeated } from '@/app/kit/page/seated.ts'
import { keepFocus } from '@/app/kit/press/keep-focus.ts'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import styles from './frame.module.css'
import { Header } from './header.tsx'
import { PageTitle } from './page-title.tsx'
import { isPlaceName } from './place-names.ts'
import { useArrival } from './use-arrival.ts'
import { useKeptManner } from './use-kept-manner.ts'

const opening = <Progress label="Opening the page" done={null} />

const LostPage = lateComponent(async () => (await import('./lost-page.tsx')).LostPage, opening)
const StartPlace = lateComponent(
  async () => (await import('@/app/home/start/start-place.tsx')).StartPlace,
  opening,
)
const KitchenPlace = lateComponent(
  async () => (await import('@/app/kitchen/kitchen-place.tsx')).KitchenPlace,
  opening,
)
/** Fetched behind the first page, and there long before anything of it need be said. */
const StandingNotes = lateComponent(
  async () => (await import('./standing-notes.tsx')).StandingNotes,
  null,
)
const HousePlace = lateComponent(
  async () => (await import('@/app/house/house-place.tsx')).HousePlace,
  opening,
)
const AboutPage = lateComponent(async () => (await import('./about-page.tsx')).AboutPage, opening)
const ScoresPlace = lateComponent(
  async () => (await import('@/app/findings/table/scores-place.tsx')).ScoresPlace,
  opening,
)
const TogetherPlace = lateComponent(
  async () => (await import('@/app/findings/together/together-place.tsx')).TogetherPlace,
  opening,
)
const AtTablePage = lateComponent(
  async () => (await import('./at-table-page.tsx')).AtTablePage,
  opening,
)
const OwnPlace = lateComponent(
  async () => (await import('@/app/own/own-place.tsx')).OwnPlace,
  opening,
)
const TablePlace = lateComponent(
  async () => (await import('@/app/table/table-place.tsx')).TablePlace,
  opening,
)
const JoinPlace = lateComponent(
  async () => (await import('@/app/table/join-place.tsx')).JoinPlace,
  opening,
)
const HubPlace = lateComponent(
  async () => (await import('@/app/table/hub-place.tsx')).HubPlace,
  opening,
)
const TrialPage = lateComponent(async () => (await import('./trial-page.tsx')).TrialPage, opening)

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
      <ErrorBoundary what="the notes of the notebook itself">
        <StandingNotes />
      </ErrorBoundary>
      <ErrorBoundary
        key={location.startsWith('/kitchen') ? location : `${opened} ${figures}`}
        what="this page"
      >
        <Suspense fallback={opening}>
          {atTable === undefined ? opening : away ? <AtTablePage trialId={atTable} /> : <Ways />}
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
      <Route path="/kitchen/:trialId?/:place?">
        {({ trialId, place }) => (
          <Page title="Kitchen">
            <KitchenPlace
              from={trialId && place && isPlaceName(place) ? { trialId, place } : null}
            />
          </Page>
        )}
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
