import { forgetUnkept, showUnkept } from '@/app/services/unkept.ts'
import { type FailureReason, failureReasonOf } from '@/core/record/failure-reason.ts'

/** A photo that was taken and could not be kept: the picture is in the page's memory alone. */
export interface UnkeptPhoto {
  photoId: string
  /** Empty where none was written. */
  caption: string
  reason: FailureReason | null
  /** Keeps it as it was taken, with its line of the log. */
  keep: () => Promise<void>
}

/** A photo whose entry was left before it was kept goes along to every other place, until it is kept or given up. */
export function carryPhoto(photo: UnkeptPhoto): void {
  const { photoId, caption, reason, keep } = photo
  const key = `photo/${photoId}`
  const retry = async () => {
    try {
      await keep()
      forgetUnkept(key)
    } catch (cause) {
      carryPhoto({ ...photo, reason: failureReasonOf(cause) })
    }
  }
  const what = caption === '' ? 'A photo from the bench' : `The photo “${caption}”`
  showUnkept({ key, what, text: '', reason, retry, giveUp: () => forgetUnkept(key) })
}
