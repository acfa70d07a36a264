import { useState } from 'react'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { ballotChanges, ofBallot } from '@/core/tasting/ballot-changes.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import {
  ballotOf,
  changeHead,
  changesCountText,
} from '@/core/wording/tasting/ballot-changes-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { useTable } from './tasting-context.ts'

/** Ballots that were changed, voided or late, without a score; and the voiding of one, which its taster is then asked again. */
export function ChangedBallots() {
  const { whole, session, state } = useTable()
  const nameOf = (id: string) => tasterName(id, whole.kitchen)
  const changes = ballotChanges(whole).filter(
    ({ sessionNumber }) => sessionNumber === session.number,
  )
  const open = state.seal === 'not-begun' || state.seal === 'sealed'
  const sealed = effectiveBallots(whole.ballots, session.id).length
  if (changes.length === 0 && (!open || sealed === 0)) return null
  return (
    <Fold
      name="Changed, voided and late ballots"
      result={changesCountText(changes) || 'none'}
      level={3}
    >
      <div className={styles.stack}>
        {changes.length > 0 ? (
          <ul>
            {changes.map((change) => (
              <li key={change.id}>{changeHead(change, nameOf)}</li>
            ))}
          </ul>
        ) : null}
        {open && sealed > 0 ? <VoidOne /> : null}
      </div>
    </Fold>
  )
}

/** Voids one ballot by its taster and what it is of; what it said stays, and so do who voided it and why. */
function VoidOne() {
  const { notebook } = useServices()
  const { whole, session } = useTable()
  const [id, setId] = useState('')
  const [by, setBy] = useState('')
  const [because, setBecause] = useState('')
  const [tried, setTried] = useState(false)
  const ballots = effectiveBallots(whole.ballots, session.id)
  const picked = ballots.find((ballot) => ballot.id === id)
  const lacks = (text: string) => tried && text.trim() === ''
  const voidIt = async () => {
    setTried(true)
    if (!picked || by.trim() === '' || because.trim() === '') return
    const { trialId, sessionId, tasterId, about, answers } = picked
    await notebook.sealBallot({
      ...{ trialId, sessionId, tasterId, about, answers, replaces: picked.id },
      change: { by: by.trim(), because: because.trim(), voids: true },
    })
    setId('')
    setBecause('')
    setTried(false)
  }
  return (
    <>
      <SelectField
        label="Void a sealed ballot"
        hint="It counts for nothing then and its taster is asked again; what it said stays in the record."
        value={picked ? id : ''}
        options={[
          { value: '', label: 'none' },
          ...ballots.map((ballot) => ({
            value: ballot.id,
            label: `${tasterName(ballot.tasterId, whole.kitchen)}, ${ballotOf(ofBallot(session, ballot))}`,
          })),
        ]}
        onValue={setId}
      />
      {picked ? (
        <>
          <TextField
            label="Voided by"
            value={by}
            onValue={setBy}
            maxLength={40}
            {...(lacks(by) ? { problem: 'Say who voids it, by initials.' } : {})}
          />
          <TextField
            label="Because"
            value={because}
            onValue={setBecause}
            maxLength={300}
            {...(lacks(because) ? { problem: 'Say why; it stands in the report.' } : {})}
          />
          <Button onPress={voidIt}>Void this ballot</Button>
        </>
      ) : null}
    </>
  )
}
