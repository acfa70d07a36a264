import * as z from 'zod/mini'
import { bytesOfLinkText, linkTextOf } from './link-text.ts'
import { sizes } from './slip-key.ts'
import type { HostOfSlips, IssuedSlip } from './take-return.ts'

const code = z.string().check(z.regex(/^[1-9][0-9]{2}$/))
const whole = z.number().check(z.int(), z.gte(0))
const issuedShape = z.strictObject({
  slot: whole,
  issue: whole,
  issuedMinute: whole,
  codes: z.array(code),
  responseIds: z.array(z.string()),
  sets: z.array(z.array(code)),
  ranks: z.exactOptional(z.enum(['apart', 'shared'])),
  tasterId: z.nullable(z.string()),
})

/** What a host keeps of its slips, as named texts. The secret never leaves the device that gave the slips out. */
export function textsOfHost({ tag, secret, issued }: HostOfSlips): Record<string, string> {
  return {
    tag: String(tag),
    secret: linkTextOf(secret),
    ...Object.fromEntries(issued.map((slip) => [`slot/${slip.slot}`, JSON.stringify(slip)])),
  }
}

/** The host that such texts stand for; null where there are none yet, or they were spoiled. */
export function hostOfTexts(
  texts: Readonly<Record<string, string>> | undefined,
): HostOfSlips | null {
  const secret = bytesOfLinkText(texts?.secret ?? '')
  const tag = Number(texts?.tag)
  if (!texts || secret?.length !== sizes.secret || !Number.isInteger(tag)) return null
  const issued = Object.entries(texts).flatMap(([key, text]): IssuedSlip[] => {
    if (!key.startsWith('slot/')) return []
    const read = issuedShape.safeParse(JSON.parse(text))
    return read.success ? [read.data] : []
  })
  return { tag, secret, issued }
}

/** A new host: tag and secret of numbers drawn fresh, each a whole number of 32 bits. */
export function newHost(draw: () => number): HostOfSlips {
  const drawn = new DataView(new ArrayBuffer(sizes.secret))
  for (let at = 0; at < sizes.secret; at += 4) drawn.setUint32(at, draw())
  return { tag: draw(), secret: new Uint8Array(drawn.buffer), issued: [] }
}
