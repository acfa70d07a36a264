import { useLocation } from 'wouter'
import styles from '@/app/findings/findings.module.css'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { followingPlan } from '@/core/plan-edits/follow-up/follow-up-plan.ts'
import { followingQuestion } from '@/core/plan-edits/follow-up/following-question.ts'
import { repeatingPlan } from '@/core/plan-edits/follow-up/repeating-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * What begins a trial beside this one: a copy of the plan with an answer of its own, and the same trial in a kitchen of one's own, whose
 * sessions pool with these. Another session of this trial is a different press: it enters this answer.
 */
export function TrialOfItsOwn({ whole }: { whole: WholeTrial }) {
  const { notebook, newId, now, zone } = useServices()
  const [, go] = useLocation()
  const plan = planInForce(whole)
  const begin = async (next: Plan, how: Follows['how']) => {
    const trialId = await notebook.createTrial(followingPlan(next, { newId, at: now(), zone }), {
      follows: { trialId: whole.trial.id, how },
      note: whole.trial.note,
    })
    go(`/trial/${trialId}/plan`)
  }
  const elsewhere = async () => {
    const theirs = new Set(whole.kitchen.map(({ id }) => id))
    const own = (await notebook.kitchen()).filter(({ id }) => !theirs.has(id))
    await begin(repeatingPlan(plan, own), 'repeats')
  }
  return (
    <>
      <div className={styles.step}>
        <p>
          Somebody else’s trial, in a kitchen of your own: the same levels and method, your things
          and your tasters. Its sessions pool with these.
        </p>
        <Button onPress={elsewhere}>Repeat this trial in my kitchen</Button>
      </div>
      <div className={styles.step}>
        <p>
          Trials of this factor, this one and repeats of it from here or elsewhere, as one answer.
        </p>
        <LinkButton href={`#/together/${whole.trial.id}`}>See it together with others</LinkButton>
      </div>
      <div className={styles.step}>
        <p>
          The same plan as a trial of its own: its sessions are an answer of their own and do not
          enter this one.
        </p>
        <Button
          onPress={() => begin({ ...plan, question: followingQuestion('Copy', plan) }, 'copies')}
        >
          Copy the plan into a new trial
        </Button>
      </div>
    </>
  )
}
