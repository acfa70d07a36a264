import { StrictMode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import * as z from 'zod/mini'
import type { Services } from '@/app/services/services.ts'
import { askToKeepStorage } from '@/app/services/storage-asked.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { writeAs } from '@/core/units/manner.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import '@/app/kit/look/fonts.css'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { randomId, randomSeed } from '@/app/services/random-id.ts'
import { App } from './app.tsx'
import { showAppearance } from './appearance.ts'
import type { StartTrouble } from './start-failure.tsx'
import { mannerOf } from './use-kept-manner.ts'

// Shapes are checked without compiling code at run time, which the page's policy forbids.
z.config({ jitless: true })

/** The same notebook, whose first trial of one's own has the browser asked to keep it. */
function keepingStorage(notebook: OpenNotebook): OpenNotebook {
  return {
    ...notebook,
    createTrial: async (...given) => {
      const trialId = await notebook.createTrial(...given)
      // Only a favour asked of the browser: that it failed must not look as if the trial had.
      void askToKeepStorage(notebook).catch(() => undefined)
      return trialId
    },
  }
}

/** Fetched only where it is needed. */
async function showFailure(root: Root, trouble: StartTrouble, detail: string): Promise<void> {
  const { StartFailure } = await import('./start-failure.tsx')
  root.render(<StartFailure trouble={trouble} detail={detail} />)
}

/** What keeps the program comes behind the first page. */
async function keepOffline(): Promise<void> {
  const [{ keepProgram }, { registerSW }] = await Promise.all([
    import('./keep-program.ts'),
    import('virtual:pwa-register'),
  ])
  const reload = () => window.location.reload()
  keepProgram(registerSW, { container: navigator.serviceWorker, reload })
}

async function start(root: Root): Promise<void> {
  if (!('indexedDB' in globalThis)) {
    await showFailure(root, 'no-store', '')
    return
  }
  const chance = { now: () => Date.now(), newId: randomId, newSeed: randomSeed }
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'
  try {
    const notebook = createNotebook('evenhand', { ...chance, zone })
    const settings = await notebook.settings()
    showAppearance(settings.appearance)
    writeAs(mannerOf(settings))
    if (import.meta.env.PROD && 'serviceWorker' in navigator) void keepOffline()
    const services: Services = { notebook: keepingStorage(notebook), zone, ...chance }
    root.render(
      <StrictMode>
        <App services={services} />
      </StrictMode>,
    )
  } catch (failure) {
    const detail = failure instanceof Error ? failure.message : String(failure)
    await showFailure(root, failureReasonOf(failure), detail)
  }
}

const place = document.getElementById('root')
if (!place) throw new Error('index.html has no element with the id root')
void start(createRoot(place))
