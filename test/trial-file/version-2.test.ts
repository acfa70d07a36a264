import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { bakes } from '@/core/session/bakes.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'

/** Sample trials exactly as version 1 wrote them. */
const folder = fileURLToPath(new URL('./version-1/', import.meta.url))

describe('files of version 1', () => {
  test.each(readdirSync(folder))('F11: %s is read, brought up and kept whole', (name) => {
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text)
    expect(read.ok ? [] : read.troubles).toEqual([])
    if (!read.ok) return
    const old = JSON.parse(text)
    expect(read.whole.trial.id).toBe(old.trial.id)
    expect(read.whole.ballots).toHaveLength(old.ballots.length)
    expect(read.whole.plans).toHaveLength(old.plans.length)
    const written = writeTrialFile(read.whole)
    expect(JSON.parse(written).version).toBe(dataVersion)
    const again = readTrialFile(written)
    expect(again.ok && again.whole).toEqual(read.whole)
  })

  test.each(readdirSync(folder))('F11: %s has the bakes and runs that it had', (name) => {
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text)
    if (!read.ok) throw new Error('it is read')
    const old = JSON.parse(text)
    const oven = ({ kind }: Event) => kind === 'bake-in' || kind === 'bake-out'
    for (const session of read.whole.sessions) {
      const plan = read.whole.plans.find(({ id }) => id === session.planId)
      if (!plan) throw new Error('its plan is there')
      const moments = (events: readonly Event[]) => {
        const standing = eventsOfSession(events, session.id)
        const runs = stepRuns(session, plan, standing)
        return {
          bakes: bakes(session, standing),
          runs: runs.map((run) => [run.unit.id, run.step.id, run.startedAt, run.stoppedAt]),
        }
      }
      expect(moments(read.whole.events)).toEqual(moments(old.events))
      // As the file says it: nothing in it was corrected or taken back, and each piece bakes by itself.
      const said = moments(read.whole.events).bakes.flatMap(({ inAt, outAt }) => [inAt, outAt])
      const own = old.events.filter((event: Event) => event.sessionId === session.id).filter(oven)
      const stamps = own.map(({ at }: Event) => at)
      expect(said.filter((at) => at !== null).toSorted()).toEqual(stamps.toSorted())
    }
    expect(read.whole.events.filter(oven).every((event) => 'stepId' in event)).toBe(true)
  })

  test('F11: a stray key of that time is still refused by name', () => {
    const [name = ''] = readdirSync(folder)
    const text = readFileSync(`${folder}${name}`, 'utf8')
    const read = readTrialFile(text.replace('"seed":', '"sead":'))
    expect(read.ok).toBe(false)
  })
})
