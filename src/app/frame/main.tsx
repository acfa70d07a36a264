import { StrictMode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import * as z from 'zod/mini'
import type { Services } from '@/app/services/services.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import '@/app/kit/look/fonts.css'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { randomId, randomSeed } from '@/app/services/random-id.ts'
import { App } from './app.tsx'
import { showAppearance } from './appearance.ts'
import { StartFailure, type StartTrouble } from './start-failure.tsx'

// Shapes are checked without compiling code at run time, which the page's policy forbids.
z.config({ jitless: true })

function troubleOf(failure: unknown): StartTrouble {
  if (!(failure instanceof NotebookFailure)) return 'other'
  switch (failure.reason) {
    case 'newer-database':
    case 'blocked':
    case 'damaged':
      return failure.reason
    default:
      return 'other'
  }
}

async function start(root: Root): Promise<void> {
  if (!('indexedDB' in globalThis)) {
    root.render(<StartFailure trouble="no-store" detail="" />)
    return
  }
  const chance = { now: () => Date.now(), newId: randomId, newSeed: randomSeed }
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'
  try {
    const notebook = createNotebook('evenhand', { ...chance, zone })
    const settings = await notebook.settings()
    showAppearance(settings.appearance)
    const services: Services = { notebook, zone, ...chance }
    root.render(
      <StrictMode>
        <App services={services} />
      </StrictMode>,
    )
  } catch (failure) {
    const detail = failure instanceof Error ? failure.message : String(failure)
    root.render(<StartFailure trouble={troubleOf(failure)} detail={detail} />)
  }
}

const place = document.getElementById('root')
if (!place) throw new Error('index.html has no element with the id root')
void start(createRoot(place))
