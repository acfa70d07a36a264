import { useRef, useState } from 'react'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { FileButton } from '@/app/kit/press/file-button.tsx'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { returnRefusalText } from '@/core/wording/tasting/slip-text.ts'
import type { TookIn } from '@/slip-host/take-in-return.ts'
import { Camera } from './camera.tsx'
import own from './slips.module.css'
import { useSlips } from './use-slips.ts'
import { useTakeIn } from './use-take-in.ts'

/** What came of a scan, said large: who is in, what was known already, what was refused and why. Never a score. */
function tookInText(took: TookIn): string {
  switch (took.came) {
    case 'refused':
      return returnRefusalText(took.reason, took.initials)
    case 'other-answers':
      return `Other answers of ${took.name} are in already. Take these instead?`
    case 'already-in':
      return `${took.name} was in already. Nothing changed.`
    case 'older':
      return `A newer return of ${took.name} is in already. Nothing changed.`
    default: {
      const how = { in: 'is in', replaced: 'is in anew', late: 'came late, kept apart' }[took.came]
      const odd = took.odd === '' ? '' : ` Kept with it: ${took.odd}.`
      return `${took.name} ${how}: ${took.count} of ${took.of}.${odd}`
    }
  }
}

/** The host takes returns in: by camera, several in a row, by a link that was sent, or from files and pictures. */
export function Collect() {
  const slips = useSlips()
  const takeIn = useTakeIn()
  const [scanning, setScanning] = useState(false)
  const [pasted, setPasted] = useState('')
  const [took, setTook] = useState<TookIn[]>([])
  const [empty, setEmpty] = useState(false)
  const turn = useRef(Promise.resolve())
  const watch = useWatched()
  if (!slips) return null
  const { host } = slips
  if (!host) return <p>Nothing was handed out yet, so nothing can come back.</p>
  const take = async (text: string, anyway = false) => {
    const came = await takeIn(host, text, anyway)
    setTook((before) => [came, ...before].slice(0, 8))
  }
  const takeLines = async (text: string) => {
    for (const line of text.split(/\s+/).filter(Boolean)) await take(line)
  }
  /** One return after another, whichever way they come: each is held against what is in by then. */
  const inTurn = (work: () => Promise<void>): Promise<void> => {
    const done = turn.current.then(work)
    turn.current = done.catch(() => undefined)
    return done
  }
  /** The field is free for the next link at once; what could not be kept comes back into it. */
  const takePasted = () => {
    const text = pasted.trim()
    setEmpty(text === '')
    setPasted('')
    const taken = inTurn(() => takeLines(text)).catch((failure: unknown) => {
      setPasted((since) => [text, since].filter(Boolean).join('\n'))
      throw failure
    })
    watch(taken)
  }
  const takeFiles = async (files: File[]) => {
    for (const file of files) {
      if (!file.type.startsWith('image/')) {
        await takeLines(await file.text())
        continue
      }
      const { textInPicture } = await import('./text-in-picture.ts')
      const picture = await createImageBitmap(file)
      await take(textInPicture(picture, picture.width, picture.height) ?? '')
      picture.close()
    }
  }
  const [last] = took
  return (
    <div className={styles.stack}>
      {scanning ? (
        <Camera onText={(text) => inTurn(() => take(text))} onStop={() => setScanning(false)} />
      ) : (
        <div className={styles.actions}>
          <Button onPress={() => setScanning(true)}>Scan ballots</Button>
          <FileButton
            accept="image/*,.txt,text/plain"
            multiple
            onFiles={(files) => inTurn(() => takeFiles(files))}
          >
            Take files or pictures
          </FileButton>
        </div>
      )}
      <div role="status" className={styles.stack}>
        {last ? <p className={own.came}>{tookInText(last)}</p> : null}
      </div>
      {last?.came === 'other-answers' ? (
        <Button onPress={() => inTurn(() => take(last.text, true))}>
          Take these for {last.name}
        </Button>
      ) : null}
      <TextArea
        label="A link that was sent"
        rows={2}
        value={pasted}
        onValue={(text) => {
          setPasted(text)
          setEmpty(false)
        }}
        maxLength={20_000}
        problem={empty ? 'Paste the link that a taster sent.' : undefined}
      />
      <div className={styles.actions}>
        <Button onPress={takePasted}>Take it in</Button>
      </div>
      <p className={styles.quiet}>
        Scores stay covered. A second scan of the same ballot does nothing.
      </p>
    </div>
  )
}
