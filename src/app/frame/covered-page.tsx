import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { logLook } from '@/app/services/log-look.ts'
import { useServices } from '@/app/services/services.ts'
import { useTableDevice } from '@/app/services/table-device.ts'
import { CloseEarly } from '@/app/tasting/close-early.tsx'
import { TableContext } from '@/app/tasting/tasting-context.ts'
import type { Session } from '@/core/session/session-record.ts'
import { type TasterState, tastingState } from '@/core/tasting/tasting-state.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { stillMissing } from '@/core/wording/bench/still-missing.ts'
import { coveredByCups, coveredText, seatText } from '@/core/wording/tasting/covered-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import styles from './covered-page.module.css'
import type { PlaceName } from './place-names.ts'

interface CoveredPageProps {
  whole: WholeTrial
  /** The sessions whose codes are kept. */
  sealed: readonly Session[]
  place: PlaceName
  /** Nobody tastes yet: cups were shuffled, and which dough is which is not known. */
  atWork: boolean
  /** Lifts the cover for this sitting; null for a place that has nothing to show before the unsealing. */
  onUncover: (() => void) | null
  /** Opens the bench with letters alone, for whoever still works while others taste; null elsewhere. */
  onWork: (() => void) | null
}

/**
 * What stands in place of a page that would name levels while a tasting is sealed: why, when it opens, the press that hands the device
 * on, who has finished, and what is open meanwhile; never a score. A look is possible, said and recorded.
 */
export function CoveredPage(props: CoveredPageProps) {
  const { whole, sealed, place, atWork, onUncover, onWork } = props
  const states = sealed.map(({ id }) => tastingState(whole, id))
  const tasting = states.reduce(
    (most, { tasters }) => Math.max(most, tasters.filter(mayScore).length),
    0,
  )
  const text = coveredText(place.name, place.title, tasting)
  const { shown, known } = atWork ? coveredByCups : text
  const last = states.at(-1)
  const session = sealed.at(-1)
  // While the device lies at the table, whoever holds it is a taster.
  const atTable = useTableDevice().trialId === whole.trial.id
  const mayClose =
    place.name === 'findings' && !atWork && !atTable && last?.seal === 'sealed' && !last.complete
  return (
    <div className={styles.page}>
      <PageHeading>{place.title}</PageHeading>
      <p className={styles.lead}>
        {shown} <span>{known}</span>
      </p>
      <div className={styles.presses}>
        <LinkButton
          href={`#/trial/${whole.trial.id}/${atWork ? 'bench' : 'tasting'}`}
          kind="primary"
        >
          {atWork ? 'To the bench' : handOn(last?.tasters ?? [], whole)}
        </LinkButton>
        {onWork ? <Button onPress={onWork}>Go on working, letters only</Button> : null}
        {onUncover ? <Uncover whole={whole} title={place.title} onUncover={onUncover} /> : null}
        {mayClose && session && last ? (
          <TableContext value={{ whole, session, state: last }}>
            <CloseEarly />
          </TableContext>
        ) : null}
      </div>
      {sealed.map((each, at) => {
        const state = states[at]
        return state ? (
          <section key={each.id} className={styles.part}>
            <div className={styles.head}>
              <h2>{sealed.length > 1 ? `Session ${each.number}, at the table` : 'At the table'}</h2>
              <span className={styles.beside}>no scores are shown</span>
            </div>
            <ul className={styles.seats}>
              {state.tasters.map((taster) => (
                <li key={taster.tasterId} className={`${styles.seat} ${seatLook(taster)}`}>
                  <b>{tasterName(taster.tasterId, whole.kitchen)}</b>
                  <span>{seatText(taster)}</span>
                </li>
              ))}
            </ul>
            <p className={styles.beside}>{stillMissing(state, whole.kitchen)}</p>
          </section>
        ) : null
      })}
      {atWork ? null : (
        <section className={styles.part}>
          <h2>On this page</h2>
          <dl>
            {text.lines.map(({ title, text }) => (
              <div key={title} className={styles.line}>
                <dt>{title}</dt>
                <dd>{text}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </div>
  )
}

const mayScore = ({ presence }: TasterState) => presence === 'present' || presence === 'awaited'

/** The press to the table says whose turn it is; where nobody's is, that codes wait there. */
function handOn(tasters: readonly TasterState[], { kitchen }: WholeTrial): string {
  const open = tasters.filter((taster) => mayScore(taster) && taster.missing.length > 0)
  const next = open.find(({ answered }) => answered > 0) ?? open[0]
  if (!next) return 'To the tasting'
  return `Hand on: ${tasterName(next.tasterId, kitchen)} ${next.answered > 0 ? 'goes on' : 'begins'}`
}

function seatLook(taster: TasterState): string | undefined {
  if (taster.answered > 0 && taster.missing.length === 0) return styles.done
  return taster.answered > 0 && mayScore(taster) ? styles.inWork : ''
}

interface UncoverProps {
  whole: WholeTrial
  title: string
  onUncover: () => void
}

function Uncover({ whole, title, onUncover }: UncoverProps) {
  const { notebook } = useServices()
  const [asking, setAsking] = useState(false)
  const uncover = async () => {
    await logLook(notebook, whole, `bakes and does not taste (${title})`)
    onUncover()
  }
  return (
    <>
      <Button onPress={() => setAsking(true)}>I bake and do not taste: uncover for me</Button>
      <Dialog
        title="Uncover this page?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={uncover}>
              Uncover
            </Button>
            <Button onPress={() => setAsking(false)}>Keep it covered</Button>
          </>
        }
      >
        <p>
          Only for eyes that do not score. The look is written into the log and said in the report.
          It holds for Plan and Bench until the device lies at the table again or the page is loaded
          again.
        </p>
      </Dialog>
    </>
  )
}
