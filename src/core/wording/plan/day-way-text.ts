import type { FoundWay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type CivilClock, civilTime, clockTime } from '@/core/wording/words/civil-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { dayMoments } from './clock-day-text.ts'

export interface DayWayText {
  /** "Friday 19:30 to Saturday 18:00". */
  title: string
  /** What is other than asked, and how equal the doughs are, in sentences. */
  said: string[]
  /** What the press that takes this day says it has done. */
  done: string
}

/** A day that goes, in a baker's words: from when to when, what is other about it, how equal it leaves the doughs. */
export function dayWayText(found: FoundWay, plan: Plan, clock: CivilClock = civilTime): DayWayText {
  const { startAt, endAt } = found
  const moments = dayMoments(startAt, plan.zone, clock)
  const seconds = (at: number) => (at - startAt) / 1000
  const eats = plan.day?.fixed?.what === 'eat'
  const day = (at: number) => moments.day(seconds(at)).split(',')[0] ?? ''
  const begins = `${day(startAt)} ${clockTime(startAt, plan.zone, clock)}`
  const ends = clockTime(endAt, plan.zone, clock)
  const endDay = day(endAt) === day(startAt) ? '' : `${day(endAt)} `
  const first = plan.steps[0]?.name ?? 'start'
  const title = `${asSentenceStart(first)} ${begins}, ${eats ? 'eat' : 'done'} ${endDay}${ends}`
  return {
    title,
    said: [...otherText(found, plan), `${waitsText(found.rung)}; ${equalText(found)}.`],
    done: `The day lies so: ${title}.`,
  }
}

function otherText({ way, startAt, endAt }: FoundWay, plan: Plan): string[] {
  const fixed = plan.day?.fixed
  switch (way.way) {
    case 'as-asked':
      return ['As you asked.']
    case 'other-moment': {
      if (!fixed) return []
      const moved = ((fixed.what === 'eat' ? endAt : startAt) - fixed.at) / 1000
      const than = moved > 0 ? 'later' : 'earlier'
      const what = fixed.what === 'eat' ? 'eat' : 'start'
      return [`You ${what} ${durationText(Math.abs(moved))} ${than} than asked.`]
    }
    case 'other-cold': {
      const step = plan.steps.find(({ id }) => id === way.stepId)
      if (!step) return []
      const longer = way.seconds > step.waitSeconds
      return [
        `${step.name} ${durationText(way.seconds)} in place of ${durationText(step.waitSeconds)}, for all doughs alike: they come to the oven ${longer ? 'further' : 'less far'} along than the method means.`,
      ]
    }
    case 'night-work':
      return ['Somebody works in the hours in which nobody was to.']
  }
}

const waitsText = (rung: number) =>
  rung <= 1 ? 'Every wait within a quarter of its tolerance' : 'Every wait within its tolerance'

function equalText({ ageSpreadSeconds, mouthSpreadSeconds }: FoundWay): string {
  const minutes = (seconds: number) => durationText(Math.round(seconds / 60) * 60)
  const ages =
    ageSpreadSeconds < 60
      ? 'ages at the oven equal'
      : `ages at the oven ${minutes(ageSpreadSeconds)} apart`
  return mouthSpreadSeconds < 60
    ? ages
    : `${ages}, minutes to the mouth ${minutes(mouthSpreadSeconds)} apart`
}
