import { type Photo, photoShape } from '@/core/session/photo-record.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { logEvents } from './log-events.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/** Keeps a photo's record, apart from it its picture, and the line of the log that tells of it: all or none. */
export async function addPhoto(
  store: Store,
  services: NotebookServices,
  photo: Photo,
  picture: Blob,
  entry?: NewEvent,
): Promise<void> {
  const kept = checked(photoShape, photo)
  if (picture.type !== kept.mediaType)
    throw new NotebookFailure('refused-record', `the picture is ${picture.type || 'of no type'}`)
  await store.transaction('rw', store.tables, async () => {
    await addRecord(store, kept, picture)
    if (entry) await logEvents(store, services, [entry])
  })
}

async function addRecord(store: Store, kept: Photo, picture: Blob): Promise<void> {
  await changeTrial(store, kept.trialId, async (whole) => {
    if (await store.photos.get(kept.id))
      throw new NotebookFailure('refused-record', `photo ${kept.id} is already here`)
    await store.photos.add(kept)
    await store.pictures.put({ id: kept.id, trialId: kept.trialId, blob: picture })
    return { now: { photos: [...whole.photos, kept] }, told: undefined }
  })
}
