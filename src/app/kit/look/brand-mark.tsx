/** The mark of Evenhand: three tabs on a beam. */
export function BrandMark() {
  return (
    <svg
      aria-hidden="true"
      width="26"
      height="14"
      viewBox="0 0 26 14"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
    >
      <path d="M3 12V3h5v9M10.5 12V3h5v9M18 12V3h5v9" />
      <path d="M0 13h26" />
    </svg>
  )
}
