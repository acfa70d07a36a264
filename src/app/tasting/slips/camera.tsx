import { useEffect, useEffectEvent, useRef, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { cameraTroubleText } from '@/core/wording/tasting/slip-text.ts'
import styles from './slips.module.css'

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
        if (!stopped)
          setTrouble(cameraTroubleText(failure instanceof DOMException ? failure.name : ''))
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
