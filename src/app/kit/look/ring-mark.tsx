/** The mark before what is good to know: a ring, where what is to be mended has its diamond. */
export function RingMark() {
  return (
    <svg
      aria-hidden="true"
      width="0.95em"
      height="0.95em"
      viewBox="0 0 16 16"
      style={{ verticalAlign: '-0.1em' }}
    >
      <circle cx="8" cy="8" r="6.4" fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  )
}
