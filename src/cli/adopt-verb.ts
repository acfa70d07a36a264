import { levelToAdopt } from '@/core/findings/judged/level-to-adopt.ts'
import { restingOn } from '@/core/findings/judged/resting-on.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { adoptLevel } from '@/core/house/adopt-level.ts'
import { houseCard } from '@/core/house/house-card.ts'
import type { House, Yield } from '@/core/house/house-record.ts'
import { learnedMixingWork, workForPlan } from '@/core/learned/learned-mixing-work.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNext } from '@/core/wording/findings/bake-next.ts'
import { answerText, headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { houseCardText } from './house-card-text.ts'
import { readTrial, stillSealed } from './read-trial.ts'
import { CommandTrouble } from './trouble.ts'
import { type Asked, jsonOption, unsealOption, type Verb } from './verb.ts'

/** A level of a trial as a house formula, weighed out at any yield. */
export const adoptVerb: Verb = {
  summary: 'keep a level as the house formula, at any yield',
  about:
    'Without --level the easiest level that is as good as the best, else the usual. The yield is that of one batch, or --pieces with --mass, or --flour. --room and --flour-at are today’s temperatures, for the water. --json gives the record itself.',
  options: {
    level: { type: 'string', value: 'VALUE', help: 'the level to keep, as the plan writes it' },
    pieces: { type: 'string', value: 'COUNT', help: 'how many pieces' },
    mass: { type: 'string', value: 'GRAMS', help: 'how heavy each piece is' },
    flour: { type: 'string', value: 'GRAMS', help: 'how much flour, in place of pieces' },
    room: { type: 'string', value: 'CELSIUS', help: 'how warm the room is today' },
    'flour-at': { type: 'string', value: 'CELSIUS', help: 'how warm the flour is today' },
    name: { type: 'string', value: 'NAME', help: 'what the house formula is called' },
    unseal: unsealOption,
    json: jsonOption,
  },
  answer: async (asked) => {
    const whole = readTrial(asked.file)
    const plan = planInForce(whole)
    const answer = trialFindings(whole, { unsealed: asked.flag('unseal'), resamples: null })
    if (!answer.ok) throw stillSealed(asked.file)
    const { scores, document: findings } = answer
    const chosen = levelToAdopt(plan, findings, levelAsked(plan, asked))
    if (!chosen)
      throw new CommandTrouble(
        `adopt: nothing was settled and no level is the usual. Say which with --level: ${levelList(plan)}.`,
      )
    const { level, because } = chosen
    const [main] = findings.responses
    const naming = main ? namingOf(findings, scores.responses[0]) : null
    const spoken = main && naming ? spokenOf(main, naming) : null
    const head = main && naming ? headline(main, naming) : null
    const said = head ? answerText(head) : ''
    const levelName = levelText(level, plan.factor.unitOfMeasure)
    const restsOn = restingOn(whole, level, { because, levelName, said })
    const made = yieldAsked(asked)
    const at = whole.events.reduce((last, event) => Math.max(last, event.at), plan.at)
    const adopted = adoptLevel(plan, level, restsOn, {
      ...{ at, zone: whole.trial.zone },
      ...(made ? { made } : {}),
    })
    if (!adopted.ok)
      throw new CommandTrouble(
        `adopt: ${levelName} cannot be made by this plan (${adopted.trouble.reason}). check ${asked.file} says why.`,
      )
    const { revision } = adopted
    const name = asked.text('name')?.trim() || `${plan.factor.name} ${levelName}`
    const house: House = {
      id: `${whole.trial.id.slice(0, 58)}-house`,
      name,
      createdAt: at,
      revisions: [revision],
    }
    const learned = workForPlan(learnedMixingWork([whole]), plan, whole.kitchen)
    const card = houseCard(revision, name, whole.kitchen, { today: todayAsked(asked), learned })
    if (asked.flag('json')) return JSON.stringify({ house, card }, null, 2)
    const bake = spoken ? bakeNext(spoken, scores) : null
    return houseCardText(house, card, bake ? `${bake.title}: ${bake.text}` : '')
  },
}

function levelAsked(plan: Plan, asked: Asked): Level | null {
  const text = asked.text('level')?.trim()
  if (text === undefined) return null
  const read = typedNumber(text, plan.factor.unitOfMeasure)
  const value = read.ok ? read.value : null
  const found = plan.levels.find(
    (level) =>
      level.label.toLowerCase() === text.toLowerCase() || (value !== null && level.value === value),
  )
  if (found) return found
  throw new CommandTrouble(
    `--level ${text}: no level of this trial. Its levels are ${levelList(plan)}.`,
  )
}

const levelList = (plan: Plan) =>
  listText(plan.levels.map((level) => levelText(level, plan.factor.unitOfMeasure)))

function yieldAsked(asked: Asked): Yield | null {
  const pieces = numberAsked(asked, 'pieces', '', 1, 480)
  const pieceGrams = numberAsked(asked, 'mass', 'g', 1, 1e6)
  const flourGrams = numberAsked(asked, 'flour', 'g', 1, 1e6)
  if (flourGrams !== null && (pieces !== null || pieceGrams !== null))
    throw new CommandTrouble('adopt: give --flour, or --pieces with --mass, not both.')
  if (flourGrams !== null) return { by: 'flour', flourGrams }
  if (pieces === null && pieceGrams === null) return null
  if (pieces === null || pieceGrams === null)
    throw new CommandTrouble(
      'adopt: --pieces and --mass go together, such as --pieces 6 --mass 280.',
    )
  if (!Number.isInteger(pieces))
    throw new CommandTrouble(`--pieces ${pieces}: write a whole number, such as 6.`)
  return { by: 'pieces', pieces, pieceGrams, lossPercent: 0 }
}

function todayAsked(asked: Asked) {
  const roomCelsius = numberAsked(asked, 'room', '°C', -30, 60)
  const flourCelsius = numberAsked(asked, 'flour-at', '°C', -30, 60)
  return {
    ...(roomCelsius === null ? {} : { roomCelsius }),
    ...(flourCelsius === null ? {} : { flourCelsius }),
  }
}

function numberAsked(
  asked: Asked,
  option: string,
  unit: string,
  least: number,
  most: number,
): number | null {
  const text = asked.text(option)
  if (text === undefined) return null
  const read = typedNumber(text, unit)
  if (read.ok && read.value !== null && read.value >= least && read.value <= most) return read.value
  throw new CommandTrouble(
    `--${option} ${text}: write a number from ${least} to ${most}${unit === '' ? '' : ` ${unit}`}.`,
  )
}
