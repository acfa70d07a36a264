import type { FormulaTrouble, Severity } from '@/core/formula/formula-problem.ts'
import type { MovedFormula } from './moved-formula.ts'

type Plain =
  | 'empty-question'
  | 'nameless-factor'
  | 'fewer-than-two-levels'
  | 'no-control'
  | 'level-without-value'
  | 'empty-label'
  | 'option-without-change'
  | 'one-dough-cannot-serve'
  | 'flour-from-itself'
  | 'no-responses'
  | 'no-main-response'
  | 'main-response-missing'
  | 'nameless-response'
  | 'no-margin'
  | 'no-expectation'
  | 'hoped-level-gone'
  | 'no-usual-level'
  | 'no-steps'
  | 'no-mix-step'
  | 'no-bake-step'
  | 'no-tasters'
  | 'one-taster'
  | 'no-scale'
  | 'tell-apart-same-level'
  | 'pair-of-nothing'
  | 'words-name-level'
  | 'not-a-number'
  | 'again-while-hot'
  | 'no-usual-to-guess'
  | 'plates-while-hot'
  | 'plates-of-several'
  | 'reference-on-plates'
  | 'cups-and-sets'

export type PlanTrouble =
  | { reason: Plain }
  | { reason: 'too-many-levels'; most: number }
  | { reason: 'two-controls'; labels: string[] }
  | { reason: 'duplicate-label'; label: string; otherIndex: number }
  | { reason: 'duplicate-value'; value: number; otherIndex: number }
  | { reason: 'options-alike'; label: string; otherIndex: number; otherLabel: string }
  | {
      reason: 'levels-collide-on-scale'
      label: string
      otherIndex: number
      otherLabel: string
      ingredientName: string
      grams: number
      resolutionGrams: number
    }
  | { reason: 'level-out-of-range'; value: number; least: number; most: number }
  | { reason: 'level-not-whole'; value: number }
  | {
      reason: 'hydration-unusual'
      hydrationPercent: number
      leastPercent: number
      mostPercent: number
    }
  | { reason: 'level-cannot-be-made'; label: string; trouble: Extract<MovedFormula, { ok: false }> }
  | { reason: 'level-breaks-formula'; label: string; trouble: FormulaTrouble }
  | { reason: 'factor-names-nothing'; id: string; what: 'ingredient' | 'preferment' | 'step' }
  | { reason: 'factor-names-wrong-kind'; name: string; wanted: string; found: string }
  | { reason: 'more-pieces-than-dough'; asked: number; has: number }
  | {
      reason: 'pieces-outweigh-dough'
      /** The level whose dough it is; null for one dough that serves all. */
      label: string | null
      pieces: number
      grams: number
      doughGrams: number
      leastFlourGrams: number
    }
  | { reason: 'codes-run-out'; asked: number; plannedSessions: number; lastFor: number }
  | { reason: 'duplicate-response'; name: string; otherIndex: number }
  | { reason: 'margin-not-above-zero'; margin: number }
  | { reason: 'margin-past-scale'; margin: number; widest: number }
  | { reason: 'anchor-missing'; at: number }
  | { reason: 'best-guess-outside'; bestGuess: number; least: number; most: number }
  | { reason: 'most-below-planned'; plannedSessions: number }
  | { reason: 'looks-too-many'; most: number }
  | { reason: 'step-takes-no-time'; name: string }
  | { reason: 'tolerance-past-wait'; name: string; earlySeconds: number; waitSeconds: number }
  | { reason: 'mark-without-words'; name: string }
  | { reason: 'cools-as-baked'; name: string; waitSeconds: number; mostSeconds: number }
  | { reason: 'taster-twice'; tasterId: string }
  | { reason: 'kitchen-thing-missing'; id: string }
  | { reason: 'shared-dose-names-nothing'; id: string }
  | { reason: 'tell-apart-level-missing'; id: string }
  | { reason: 'again-level-missing'; id: string }
  | { reason: 'temperature-unusual'; celsius: number; least: number; most: number }
  | { reason: 'oven-heat-unusual'; value: number; least: number; most: number; unit: '°C' | '°F' }
  | {
      reason: 'hotter-than-oven'
      value: number
      most: number
      unit: '°C' | '°F'
      /** The chosen ovens, of which the hottest goes up to `most`. */
      names: string[]
    }
  | { reason: 'oven-holds-fewer'; names: string[]; holds: number; asked: number }
  | { reason: 'fridge-holds-fewer'; names: string[]; holds: number; asked: number }

/**
 * A problem of a plan. `path` is a JSON Pointer into the plan: the field where the message belongs. `stop` keeps the plan
 * from being worked; `ask` wants a second look and forbids nothing. The formula's own problems come with `/formula` before
 * their path.
 */
export type PlanProblem = (PlanTrouble | FormulaTrouble) & { path: string; severity: Severity }
