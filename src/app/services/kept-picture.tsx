import { usePhoto } from './use-photo.ts'

interface KeptPictureProps {
  photoId: string
  alt: string
  className?: string | undefined
  /** How the room looks that a missing picture leaves. */
  roomClassName?: string | undefined
}

/** A photo's picture out of the notebook; one that did not travel with its trial's file is said to be missing. */
export function KeptPicture({ photoId, alt, className, roomClassName }: KeptPictureProps) {
  const { address, missing } = usePhoto(photoId)
  if (address !== null) return <img className={className} src={address} alt={alt} />
  return (
    <span className={roomClassName}>{missing ? 'This picture is not on this device.' : null}</span>
  )
}
