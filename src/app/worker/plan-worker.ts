import * as Comlink from 'comlink'
import type { TrialDesign } from '@/core/design/detectable.ts'
import { type WhatWouldHelp, whatWouldHelp } from '@/core/design/what-would-help.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { type Circumstances, fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

const service = {
  /** The fairness check of a plan as it is typed. */
  fairness(plan: Plan, circumstances: Circumstances): FairnessItem[] {
    return fairnessOfPlan(plan, circumstances)
  },
  /** What a design could detect, and what one step more would buy. */
  help(design: TrialDesign): WhatWouldHelp {
    return whatWouldHelp(design)
  },
}

export type PlanService = typeof service

Comlink.expose(service)
