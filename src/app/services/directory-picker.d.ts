/** What some browsers add to the File System standard (WICG File System Access, draft): a folder that a person chooses. */
interface FileSystemHandle {
  queryPermission?(asked: { mode: 'readwrite' }): Promise<PermissionState>
  requestPermission?(asked: { mode: 'readwrite' }): Promise<PermissionState>
}

interface Window {
  showDirectoryPicker?(options: {
    id: string
    mode: 'readwrite'
    startIn: 'documents'
  }): Promise<FileSystemDirectoryHandle>
}
