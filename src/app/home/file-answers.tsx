import { useState } from 'react'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { comparisonText, conflictText, countsText } from '@/core/wording/files/comparison-text.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import styles from './home.module.css'
import { ImportTroubles } from './import-troubles.tsx'
import type { FileAnswer, ReadFile, ReadIn } from './use-read-in.ts'

/** What came of each file that was read in, in the order they were given. */
export function FileAnswers({ reading }: { reading: ReadIn }) {
  return reading.answers
    .filter(({ answer }) => answer.is !== 'left')
    .map((file) => <OneAnswer key={file.key} file={file} reading={reading} />)
}

function OneAnswer({ file, reading }: { file: ReadFile; reading: ReadIn }) {
  const { name, answer, key } = file
  const close = (
    <Button kind="quiet" onPress={() => reading.forget(key)} label={`Close: ${name}`}>
      Close
    </Button>
  )
  switch (answer.is) {
    case 'in':
      return (
        <Notice kind="know" title={answer.already ? `${name} is here already` : `${name} came in`}>
          <FieldRow>
            <LinkButton href={`#/trial/${answer.trialId}/plan`}>Open the trial</LinkButton>
            {close}
          </FieldRow>
        </Notice>
      )
    case 'taken':
      return <Taken name={name} answer={answer} close={close} />
    case 'twin':
      return <Twin file={file} answer={answer} reading={reading} />
    case 'refused':
      return <ImportTroubles fileName={name} troubles={answer.troubles} close={close} />
    case 'table':
      return (
        <ErrorNote title={`${name} is a table of scores and was not read in.`} action={close}>
          Give it by itself, so that you can say which column is what.
        </ErrorNote>
      )
    case 'zip':
      return (
        <ErrorNote title={`${name} is no trial file and was not read in.`} action={close}>
          It is packed, as a backup is. A backup comes back by “Restore a backup” in the menu.
        </ErrorNote>
      )
    case 'failed':
      return <Failed name={name} answer={answer} close={close} />
    case 'left':
      return null
  }
}

type Answer<Is extends FileAnswer['is']> = Extract<FileAnswer, { is: Is }>

function Taken(props: { name: string; answer: Answer<'taken'>; close: React.ReactNode }) {
  const { taken, conflicts, trialId } = props.answer
  const words = countsText(taken)
  return (
    <Notice
      kind={conflicts.length > 0 ? 'caution' : 'know'}
      title={`${props.name}: ${words === '' ? 'no new records' : `${words} came in`}`}
    >
      {conflicts.length > 0 ? (
        <ul className={styles.troubles}>
          {conflicts.map((conflict) => (
            <li key={JSON.stringify(conflict)}>{conflictText(conflict)}</li>
          ))}
        </ul>
      ) : null}
      <FieldRow>
        <LinkButton href={`#/trial/${trialId}/plan`}>Open the trial</LinkButton>
        {props.close}
      </FieldRow>
    </Notice>
  )
}

function Twin(props: { file: ReadFile; answer: Answer<'twin'>; reading: ReadIn }) {
  const { file, answer, reading } = props
  const { compared, uncovers, binned, trialId, text } = answer
  const [asked, setAsked] = useState(false)
  const asks = uncovers && !asked
  return (
    <Notice kind="caution" title={`${file.name}: this trial is already here, with other content`}>
      <p>
        {compared
          ? comparisonText(compared)
          : 'Some of its records have the ids of other records here.'}
      </p>
      {binned ? <p>The one here lies under Thrown out.</p> : null}
      {uncovers && asked ? (
        <p role="status">
          Its tasting here is sealed, and the copy shows its levels and weights. The look is written
          into the log of the sealed trial for good, and its report says so.
        </p>
      ) : null}
      <FieldRow>
        {compared ? (
          <Button kind="primary" onPress={() => reading.takeInNew(file.key, text)}>
            Take in what is new
          </Button>
        ) : null}
        {binned ? (
          <Button onPress={() => reading.takeBack(file.key, trialId)}>
            Take the one here back
          </Button>
        ) : null}
        <Button onPress={() => (asks ? setAsked(true) : reading.keepBoth(file.key, text))}>
          {uncovers && asked ? 'Look, and keep both' : 'Keep both'}
        </Button>
        <Button kind="quiet" onPress={() => reading.forget(file.key)}>
          Leave the notebook as it is
        </Button>
      </FieldRow>
    </Notice>
  )
}

function Failed(props: { name: string; answer: Answer<'failed'>; close: React.ReactNode }) {
  const { reason, detail, again } = props.answer
  const { title, kept, mend } = keepingFailureText(reason)
  return (
    <ErrorNote
      title={`${props.name} could not be read in. ${title}`}
      action={
        <FieldRow>
          <Button onPress={again}>Try again</Button>
          {props.close}
        </FieldRow>
      }
    >
      <p>
        {kept} {mend}
      </p>
      {reason === null ? (
        <p>
          The program says: <q>{detail}</q>
        </p>
      ) : null}
    </ErrorNote>
  )
}
