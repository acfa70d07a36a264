/** The mark at the end of a row that leads on, or opens: turned down while it is open. */
export function ForwardMark({ turned = false }: { turned?: boolean }) {
  return (
    <svg
      aria-hidden="true"
      width="1rem"
      height="1rem"
      viewBox="0 0 16 16"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.2"
      style={{ flex: 'none', ...(turned ? { rotate: '90deg' } : {}) }}
    >
      <path d="M5 1.5 11.5 8 5 14.5" />
    </svg>
  )
}
