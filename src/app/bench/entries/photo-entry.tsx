import { useEffect, useId, useRef, useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { failureReasonOf } from '@/core/record/failure-reason.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import { shrunkPhoto } from './shrunk-photo.ts'
import { carryPhoto, type UnkeptPhoto } from './unkept-photo.ts'
import { widthOfView } from './width-of-view.ts'

/** A photo of the dough or piece in front, from the camera or a file. It stays on this device and travels in a backup. */
export function PhotoEntry({ unit, caption: asked = '', onKept }: EntryProps) {
  const { notebook, now, newId } = useServices()
  const { whole, session } = useBench()
  const id = useId()
  const [caption, setCaption] = useState(asked)
  const [width, setWidth] = useState('')
  /** A picture that was chosen while its width could not be read. */
  const [waiting, setWaiting] = useState<File | null>(null)
  const [unreadable, setUnreadable] = useState<string | null>(null)

  const [notKept, setNotKept] = useState<UnkeptPhoto | null>(null)
  const unkept = useRef<UnkeptPhoto | null>(null)
  const left = useRef(false)
  useEffect(() => {
    left.current = false
    return () => {
      left.current = true
      if (unkept.current) carryPhoto(unkept.current)
    }
  }, [])

  const keep = async (photo: UnkeptPhoto) => {
    try {
      await photo.keep()
    } catch (cause) {
      const failed = { ...photo, reason: failureReasonOf(cause) }
      if (left.current) return carryPhoto(failed)
      unkept.current = failed
      setNotKept(failed)
      return
    }
    unkept.current = null
    onKept()
  }
  const take = async (file: File | undefined) => {
    if (!file) return
    // Another photo does not take the place of one that still waits.
    if (unkept.current) carryPhoto(unkept.current)
    unkept.current = null
    setNotKept(null)
    const view = widthOfView(width)
    setWaiting(view ? null : file)
    if (!view) return
    const shrunk = await shrunkPhoto(file).catch(() => null)
    if (!shrunk) {
      setUnreadable(file.name)
      return
    }
    const photoId = newId()
    const { picture, ...size } = shrunk
    const photo = { id: photoId, trialId: whole.trial.id, at: now(), ...size }
    const words = caption.trim() === '' ? {} : { caption: caption.trim() }
    const ids = { trialId: whole.trial.id, sessionId: session.id }
    await keep({
      ...{ photoId, caption: caption.trim(), reason: null },
      keep: () =>
        notebook.addPhoto({ ...photo, mediaType: 'image/jpeg' }, picture, {
          ...{ ...ids, kind: 'photo', about: unit, photoId, ...words, ...view },
        }),
    })
  }
  return (
    <div className={styles.entry}>
      <TextField
        label="Caption (may stay empty)"
        value={caption}
        onValue={setCaption}
        maxLength={500}
      />
      <NumberField
        label="Width of what it shows (may stay empty)"
        unit="cm"
        hint="From the left edge of the picture to its right one, as a ruler beside the dough tells it. With it, pictures are shown at one scale."
        value={null}
        onValue={() => {}}
        text={width}
        onText={setWidth}
        check={amountCheck.view}
      />
      <label className={styles.file} htmlFor={`${id}-camera`}>
        Take a photo
      </label>
      <input
        id={`${id}-camera`}
        className={styles.fileInput}
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(change) => void take(change.target.files?.[0])}
      />
      <label className={styles.file} htmlFor={id}>
        Choose a picture
      </label>
      <input
        id={id}
        className={styles.fileInput}
        type="file"
        accept="image/*"
        onChange={(change) => void take(change.target.files?.[0])}
      />
      {waiting ? (
        <ErrorNote
          title="The photo waits for its width"
          action={<Button onPress={() => take(waiting)}>Keep the photo</Button>}
        >
          Width of what it shows: mend the figure above, or empty it where nobody measured.
        </ErrorNote>
      ) : null}
      {notKept ? <PhotoNotKept {...notKept} again={() => keep(notKept)} /> : null}
      {unreadable !== null ? (
        <ErrorNote title="This file is no picture the browser can read">
          {unreadable} was left as it is. Choose a JPEG, PNG or WebP picture.
        </ErrorNote>
      ) : null}
    </div>
  )
}

function PhotoNotKept({ reason, again }: UnkeptPhoto & { again: () => Promise<void> }) {
  const { title, kept, mend } = keepingFailureText(reason)
  return (
    <ErrorNote
      title={`The photo was not kept. ${title}`}
      action={<Button onPress={again}>Try again</Button>}
    >
      {kept} {mend}
    </ErrorNote>
  )
}
