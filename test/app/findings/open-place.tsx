import type { ReactNode } from 'react'
import { render } from 'vitest-browser-react'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'
import { type Services, ServicesContext } from '@/app/services/services.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

let made = 0

/** A notebook of its own with these trials in it. */
export async function notebookWith(
  ...files: (string | WholeTrial)[]
): Promise<{ notebook: OpenNotebook; trialIds: string[]; services: Services }> {
  const newId = () => `f${++made}-${crypto.randomUUID()}`
  const chance = { now: () => Date.now(), zone: 'Europe/Rome', newId, newSeed: () => 7 }
  const notebook = createNotebook(`findings-${newId()}`, chance)
  const trialIds: string[] = []
  for (const file of files) {
    const outcome = await notebook.importTrial(
      typeof file === 'string' ? file : writeTrialFile(file),
    )
    if (!outcome.ok) throw new Error(JSON.stringify(outcome))
    trialIds.push(outcome.trialId)
  }
  return { notebook, trialIds, services: { notebook, ...chance } }
}

/** A place on the screen with its services around it, and the addresses it went to. */
export async function openPlace(services: Services, place: ReactNode) {
  const { hook, history } = memoryLocation({ path: '/', record: true })
  const screen = await render(
    <ServicesContext value={services}>
      <Router hook={hook}>{place}</Router>
    </ServicesContext>,
  )
  return { screen, history }
}
