import { describe, expect, test } from 'vitest'
import { withBaker, withTaster } from '@/core/plan-edits/people/tasters.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { blindBaker } from '@/core/tasting/baker-blind.ts'
import { bakerAmong, bakerTastesBlind } from '@/core/trial/baker-tastes.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from '../session/made-events.ts'

const two = madePlan({
  keyKeptBy: 'baker',
  tasters: ['t1', 't2'].map((tasterId) => ({ tasterId, knows: false })),
})

describe('the baker among the tasters', () => {
  test('is whoever is marked, and stays so when what they know is changed', () => {
    expect(bakerAmong(two)).toBeNull()
    const marked = withTaster(withBaker(two, 't2'), 't2', 'knows')
    expect(bakerAmong(marked)).toEqual({ tasterId: 't2', knows: true, baker: true })
    expect(bakerTastesBlind(marked)).toBe(false)
    expect(bakerTastesBlind(withTaster(marked, 't2', 'blind'))).toBe(true)
    expect(bakerAmong(withBaker(marked, 't1'))?.tasterId).toBe('t1')
  })

  test('is the only one at the table, unless a helper keeps the key or it was said otherwise', () => {
    const alone = withTaster(two, 't2', 'out')
    expect(bakerAmong(alone)?.tasterId).toBe('t1')
    expect(bakerAmong({ ...alone, keyKeptBy: 'helper' })).toBeNull()
    expect(bakerAmong(withBaker(alone, null))).toBeNull()
  })

  test('is blind until they look at the key themselves; the look of another changes nothing', () => {
    const plan = withBaker(two, 't2')
    const { events, log } = madeLog()
    log({ kind: 'peeked', reason: 'plates and does not taste' })
    expect(blindBaker(plan, effectiveEvents(events))).toBe('t2')
    log({ kind: 'peeked', reason: 'looked' }, { about: { kind: 'taster', id: 't2' } })
    expect(blindBaker(plan, effectiveEvents(events))).toBeNull()
  })
})
