import { type Photo, photoShape } from '@/core/session/photo-record.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** Keeps a photo's record and, apart from it, its picture. */
export async function addPhoto(store: Store, photo: Photo, picture: Blob): Promise<void> {
  const kept = checked(photoShape, photo)
  if (picture.type !== kept.mediaType)
    throw new NotebookFailure('refused-record', `the picture is ${picture.type || 'of no type'}`)
  await changeTrial(store, kept.trialId, async (whole) => {
    if (await store.photos.get(kept.id))
      throw new NotebookFailure('refused-record', `photo ${kept.id} is already here`)
    await store.photos.add(kept)
    await store.pictures.put({ id: kept.id, trialId: kept.trialId, blob: picture })
    return { now: { photos: [...whole.photos, kept] }, told: undefined }
  })
}
