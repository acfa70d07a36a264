import { useEffect, useEffectEvent, useRef, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './slips.module.css'

/** What keeps a camera from being used, in words, with the mend. */
function cameraTrouble(failure: unknown): string {
  const name = failure instanceof DOMException ? failure.name : ''
  if (name === 'NotAllowedError')
    return 'The camera is not allowed for this page. Allow it in the browser’s settings, or paste the link.'
  if (name === 'NotFoundError')
    return 'This device has no camera. Paste the link, or choose a file.'
  return 'The camera cannot be opened, perhaps because another program holds it or the page is not served securely. Paste the link, or choose a file.'
}

interface CameraProps {
  onText: (text: string) => Promise<void>
  onStop: () => void
}

const pauseMilliseconds = 120

/** The camera, looking for scan codes until it is stopped. The same code held before it is read once. */
export function Camera({ onText, onStop }: CameraProps) {
  const video = useRef<HTMLVideoElement>(null)
  const [trouble, setTrouble] = useState('')
  const read = useEffectEvent(onText)
  useEffect(() => {
    let stream: MediaStream | undefined
    let stopped = false
    let last = ''
    const look = async () => {
      const { textInPicture } = await import('./text-in-picture.ts')
      stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 720 } },
      })
      const shown = video.current
      if (stopped || !shown) return
      shown.srcObject = stream
      await shown.play()
      while (!stopped) {
        const text = textInPicture(shown, shown.videoWidth, shown.videoHeight)
        if (text !== null && text !== last) {
          last = text
          await read(text)
        }
        await new Promise((done) => setTimeout(done, pauseMilliseconds))
      }
    }
    look()
      .catch((failure: unknown) => {
        if (!stopped) setTrouble(cameraTrouble(failure))
      })
      .finally(() => {
        if (stopped) stopAll(stream)
      })
    return () => {
      stopped = true
      stopAll(stream)
    }
  }, [])
  return (
    <div className={styles.camera}>
      {trouble === '' ? (
        <video ref={video} muted playsInline aria-label="What the camera sees" />
      ) : (
        <p role="alert">{trouble}</p>
      )}
      <Button onPress={onStop}>Stop the camera</Button>
    </div>
  )
}

function stopAll(stream: MediaStream | undefined): void {
  for (const track of stream?.getTracks() ?? []) track.stop()
}
