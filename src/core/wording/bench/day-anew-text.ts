import type { DayAnew } from '@/core/session/anew/day-anew.ts'
import type { LateWait } from '@/core/session/anew/late-waits.ts'
import type { WayOn } from '@/core/session/anew/way-on.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { stepName } from '@/core/wording/words/named-in-plan.ts'
import { unitLetter } from '@/core/wording/words/unit-name.ts'

export interface DayAnewText {
  /** What is late, and what comes of going on. */
  sentence: string
  /** The press by which the others wait as long, and what comes of it; null where going on is all there is. */
  wait: { press: string; after: string } | null
}

/** Said to the minute from one on: what is seen from the other end of the kitchen. */
const minutesText = (seconds: number) =>
  durationText(seconds < 60 ? seconds : Math.round(seconds / 60) * 60)

/** A day that is done this much later than planned is said to be; less is the kitchen's usual. */
const laterFromSeconds = 300

/** The day made anew in one line, with its choice; null where nothing is late and nothing to be made equal. Tells no level. */
export function dayAnewText(
  anew: DayAnew,
  session: Session,
  plan: Plan,
  now: number,
): DayAnewText | null {
  const late = anew.late.find(({ over }) => !over) ?? (anew.wait ? anew.late[0] : undefined)
  if (!late) return null
  const doneAt = (way: WayOn) => {
    const later = (way.endAt - anew.plannedEndAt) / 1000
    const than = later >= laterFromSeconds ? `, ${minutesText(later)} later than planned` : ''
    return `all is done at ${dayTime(way.endAt, now, session.zone)}${than}`
  }
  const goes = anew.wait ? 'Going on' : 'Go on'
  const sentence = `${lateText(late, session, plan)} ${goes}: ${apartText(anew.goOn)}${doneAt(anew.goOn)}.`
  if (!anew.wait) return { sentence, wait: null }
  const { units, moreSeconds } = anew.wait
  const letters = [...new Set(units.map((unit) => unitLetter(session, unit).letter))].toSorted(
    (one, other) => one.localeCompare(other),
  )
  return {
    sentence,
    wait: {
      press: `Let ${listText(letters)} wait ${durationText(moreSeconds)} longer too`,
      after: `Then ${apartText(anew.wait)}${doneAt(anew.wait)}.`,
    },
  }
}

function lateText(
  { batchId, stepId, seconds, over, ahead }: LateWait,
  session: Session,
  plan: Plan,
): string {
  const { letter } = unitLetter(session, { kind: 'batch', id: batchId })
  const name = stepName(plan, stepId)
  return over
    ? `${letter} waited ${minutesText(seconds)} too long at ${name}.`
    : `${letter} ${ahead ? 'will be' : 'is'} ${minutesText(seconds)} past its ${name}.`
}

/** How far apart the doughs come out; nothing where they are as good as equal. */
function apartText({ ageSpreadSeconds, mouthSpreadSeconds }: WayOn): string {
  const minute = 60
  const ages = `ages at the oven are ${minutesText(ageSpreadSeconds)} apart, `
  const mouths = `minutes to the mouth ${minutesText(mouthSpreadSeconds)} apart, `
  return `${ageSpreadSeconds >= minute ? ages : ''}${mouthSpreadSeconds >= minute ? mouths : ''}`
}
