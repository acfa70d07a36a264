import { useEffect, useRef } from 'react'

/** A chart of the report, drawn as plain SVG by the report itself: the screen shows exactly what the file holds. */
export function SvgPicture({ svg }: { svg: string }) {
  const ref = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const parsed = new DOMParser().parseFromString(svg, 'text/html').body.firstElementChild
    if (parsed) ref.current?.replaceChildren(parsed)
  }, [svg])
  return <div ref={ref} />
}
