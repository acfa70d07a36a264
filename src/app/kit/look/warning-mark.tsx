/** The mark before every warning: shape first, so that colour is never the only sign. */
export function WarningMark() {
  return (
    <svg
      aria-hidden="true"
      width="0.95em"
      height="0.95em"
      viewBox="0 0 16 16"
      style={{ verticalAlign: '-0.1em' }}
    >
      <path d="M8 0.8 15.2 8 8 15.2 0.8 8Z" fill="currentColor" />
    </svg>
  )
}
