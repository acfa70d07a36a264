import { wrappedBy } from '@/exchange/wrapped.ts'
import { readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfLinkText } from '@/slip/link-text.ts'
import type { Invitation } from '@/table/invitation.ts'

/** One message as it came over a device's line. */
export interface Came {
  subject: string
  /** As the hub gave it, one sign a byte. */
  body: string
  /** What it says, opened with the device's own keys and a slip in it unpacked; null where no key of the device opens it. */
  opened: string | null
}

/** Every message of a device's frames, each tried with every key that its invitation holds. */
export async function messagesOf(
  frames: readonly string[],
  { table, login, secret }: Pick<Invitation, 'table' | 'login' | 'secret'>,
): Promise<Came[]> {
  const { toDevice, fromDevice } = await wrappedBy(secret)
  const bytes = frames.join('')
  const came: Came[] = []
  // How the message server writes (its protocol's own page, seen): MSG subject sid [reply] size, HMSG with two sizes, the last of all.
  for (const line of bytes.matchAll(/(H?)MSG (\S+) \S+ (?:[^\s\d]\S* )?(?:(\d+) )?(\d+)\r\n/g)) {
    const [whole, withHead, subject = '', head, size] = line
    const from = line.index + whole.length
    const body = bytes.slice(from + (withHead ? Number(head) : 0), from + Number(size))
    const sealed = Uint8Array.from(body, (sign) => sign.charCodeAt(0))
    let opened: string | null = null
    for (const way of [toDevice, fromDevice])
      for (const under of [subject, `n.${login.name}.0`]) {
        const read = await way.open({ table, subject: under }, sealed)
        if (read.ok) opened = `${read.text}${unpacked(read.text)}`
      }
    came.push({ subject, body, opened })
  }
  return came
}

/** The slip in a notice, in its own words. */
function unpacked(text: string): string {
  const slip: unknown = JSON.parse(text).slip
  const packed = typeof slip === 'string' ? bytesOfLinkText(slip) : null
  return JSON.stringify(packed && readSlip(packed))
}
