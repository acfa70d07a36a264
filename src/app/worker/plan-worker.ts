import * as Comlink from 'comlink'
import type { TrialDesign } from '@/core/design/detectable.ts'
import {
  type SetsAsked,
  type TellApartReach,
  tellApartReach,
} from '@/core/design/tell-apart-reach.ts'
import { type WhatWouldHelp, whatWouldHelp } from '@/core/design/what-would-help.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { type Circumstances, fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

export interface ReachAsked {
  design: TrialDesign
  sets: SetsAsked
}

export interface Reach {
  help: WhatWouldHelp
  tellApart: TellApartReach | null
}

const service = {
  /** The fairness check of a plan as it is typed. */
  fairness(plan: Plan, circumstances: Circumstances): FairnessItem[] {
    return fairnessOfPlan(plan, circumstances)
  },
  /** The fairness check of a trial with its log. Names levels beside orders: asked only where nothing is sealed any more. */
  fairnessOfTrial(whole: WholeTrial): FairnessItem[] {
    return fairnessOfTrial(whole)
  },
  /** What a design could detect and what one step more would buy; what the tell-apart test could show, where there is one. */
  reach({ design, sets }: ReachAsked): Reach {
    return { help: whatWouldHelp(design), tellApart: tellApartReach(sets) }
  },
}

export type PlanService = typeof service

Comlink.expose(service)
