import { render } from 'vitest-browser-react'
import { App } from '@/app/frame/app.tsx'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { Notebook, OpenNotebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { begun, minutes } from '../../trial-of/made-up-day.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

let ids = 0
const chance = {
  now: () => begun + 150 * minutes + Math.round(performance.now()),
  newId: () => `made-${++ids}`,
  newSeed: () => 7,
  zone: 'Europe/Rome',
}

/** The trial of the tests, its question naming a level, before the tasting was closed: two servings out, a taster's ballots in. */
export function atTheTable(): WholeTrial {
  const whole = wholeTrialOf()
  return {
    ...whole,
    plans: whole.plans.map((plan) => ({ ...plan, question: 'Is 73.2 better than 66.4?' })),
    events: whole.events.filter(({ count }) => count <= 23),
  }
}

/** The whole app at an address, around a notebook of its own that holds this trial. */
export async function openedAt(place: string, whole: WholeTrial) {
  const notebook: OpenNotebook = createNotebook(`seal-${performance.timeOrigin}-${++ids}`, chance)
  const read = await notebook.importTrial(writeTrialFile(whole))
  if (!read.ok) throw new Error(JSON.stringify(read))
  const settings = await notebook.settings()
  await notebook.keepSettings({ cautionsSeen: [...settings.cautionsSeen, 'tasting'] })
  location.hash = `#/${place}`
  const screen = await render(<App services={{ notebook, ...chance }} />)
  return { notebook, screen }
}

export const kindsIn = async (notebook: Notebook) =>
  (await notebook.wholeTrial('trial-1'))?.events.map(({ kind }) => kind) ?? []
