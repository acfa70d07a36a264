import { useState } from 'react'
import { mostScannable, ScanCode } from '@/app/kit/page/scan-code.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import styles from '@/app/tasting/seat/tasting.module.css'
import { digitsOf } from '@/slip/digits.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { bytesOfReturn, type ReturnSlip } from '@/slip/return-slip.ts'

interface ShowReturnProps {
  back: ReturnSlip
  slipKey: Uint8Array
}

/** The way back: a code for the host's camera, else a link or a small file with the same. */
export function ShowReturn({ back, slipKey }: ShowReturnProps) {
  const bytes = bytesOfReturn(back, slipKey)
  const digits = digitsOf(bytes)
  const link = `${location.origin}${location.pathname}#/back/${linkTextOf(bytes)}`
  const [copied, setCopied] = useState('')
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link)
      setCopied('Copied. Send it to the host.')
    } catch {
      // A browser without a clipboard for this page: the file says the same.
      setCopied('This browser does not copy; save the file instead.')
    }
  }
  return (
    <div className={styles.stack}>
      <p className={styles.lead}>Show this to the host.</p>
      {digits.length <= mostScannable.digits ? (
        <ScanCode text={digits} label="Your ballots, to be scanned by the host" />
      ) : (
        <p>Your words make the code too dense to scan. Send the link or the file instead.</p>
      )}
      <p>Keep this page until the host’s screen says that you are in.</p>
      <p>No camera, or too dim? Send the host the link or the file.</p>
      <div className={styles.actions}>
        <Button onPress={copy}>Copy the link</Button>
        <Button onPress={() => saveFile('ballots.txt', link)}>Save as a file</Button>
      </div>
      <p role="status" className={styles.quiet}>
        {copied}
      </p>
    </div>
  )
}
