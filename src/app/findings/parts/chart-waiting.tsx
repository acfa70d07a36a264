/** The room a chart will take while its program loads, so that nothing jumps. */
export function ChartWaiting({ heightPixels }: { heightPixels: number }) {
  return <div style={{ blockSize: heightPixels }} aria-busy="true" />
}
