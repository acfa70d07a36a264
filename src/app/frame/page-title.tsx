/** The title of the window or tab, from the particular to the app. */
export function PageTitle({ parts }: { parts: readonly string[] }) {
  return <title>{[...parts, 'Evenhand'].join(' · ')}</title>
}
