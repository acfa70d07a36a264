import { memo } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/plan/method/method-section.module.css'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useOpened } from '@/app/plan/page/use-opened.ts'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import { takeOutResponse } from '@/core/plan-edits/take-out/take-out.ts'
import type { Response } from '@/core/trial/response.ts'
import { ResponseFields } from './response-fields.tsx'

interface Props {
  response: Response
  index: number
  locked: boolean
}

/** One response in a line; open, its fields. The main one cannot go once it is locked. */
export const ResponseRow = memo(function ResponseRow({ response, index, locked }: Props) {
  const [open, setOpen] = useOpened(`/responses/${index}`)
  const takeOut = useTakeOut()
  const main = usePlanPage((page) => page.plan.mainResponseId === response.id)
  const { name } = response
  return (
    <li className={styles.step} data-path={`/responses/${index}`}>
      <div className={styles.head}>
        <span className={styles.name}>
          <b>{name}</b> <span className={styles.times}>{responseWords(response)}</span>
          {main ? ' · main response' : null}
        </span>
        <span className={styles.presses}>
          <Button
            size="small"
            expanded={open}
            label={`${open ? 'Close' : 'Change'} ${name}`}
            onPress={() => setOpen(!open)}
          >
            {open ? 'Close' : 'Change'}
          </Button>
          <Button
            kind="quiet"
            size="small"
            label={`Remove ${name}`}
            disabled={main && locked}
            onPress={() => takeOut((plan) => takeOutResponse(plan, response.id))}
          >
            Remove
          </Button>
        </span>
      </div>
      {open ? <ResponseFields response={response} index={index} locked={main && locked} /> : null}
    </li>
  )
})

function responseWords({ by, about, scale, better }: Response): string {
  const who = by === 'taster' ? 'by each taster' : 'by the baker'
  const how =
    scale.kind === 'nine-point'
      ? 'on 1 to 9'
      : scale.kind === 'just-about-right'
        ? 'too little to too much'
        : `measured${scale.unitOfMeasure ? ` in ${scale.unitOfMeasure}` : ''}`
  const wish =
    better.is === 'neither' ? '' : better.is === 'target' ? 'a target' : `${better.is} is better`
  return [who, `each ${about}`, how, wish].filter(Boolean).join(' · ')
}
