export interface BenchUnit {
  kind: 'batch' | 'piece'
  id: string
}

export interface EntryProps {
  unit: BenchUnit
  onKept: () => void
}
