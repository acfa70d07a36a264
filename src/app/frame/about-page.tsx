import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { offline } from '@/app/services/offline.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import styles from './about-page.module.css'
import { type Licence, readLicences } from './licences.ts'

const fonts = [
  { name: 'Atkinson Hyperlegible Next', file: 'licences/atkinson-hyperlegible-next.txt' },
  { name: 'Rokkitt', file: 'licences/rokkitt.txt' },
]

/** What this program is, which version, whose work it stands on, and what it does with what is typed in. */
export function AboutPage() {
  return (
    <div className={styles.about}>
      <PageHeading>About Evenhand</PageHeading>
      <p>
        A notebook for fair side-by-side dough trials: one thing changes, everything else is held,
        the tasting is blind, and the answer says how sure it is.
      </p>
      <dl className={styles.facts}>
        <dt>Version</dt>
        <dd>{__APP_VERSION__}</dd>
        <dt>Data version</dt>
        <dd>{dataVersion}</dd>
        <dt>Licence</dt>
        <dd>MIT</dd>
      </dl>
      <Section title="What happens to your notes">
        <p>
          They stay in this browser, on this device. There is no account and no server, and the page
          calls no other address. Clearing this site’s data clears the notebook: back it up from the
          Notebook page and keep the file somewhere else.
        </p>
        <p>
          Tasters are kept by initials or a code, in one record each, and can be erased under
          Kitchen; their scores stay without a name. A trial file that you export carries its
          tasters’ initials.
        </p>
      </Section>
      <Section title="Days without a network">
        <OfflineWords />
      </Section>
      <Section title="Something is wrong">
        <p>
          Report a mistake, or a leak of something that should have stayed sealed, where you got
          this program; DEVELOPERS.md in its source says how. Name the version above, what you
          pressed, what you expected and what came, and add the trial’s exported file if you may
          share it.
        </p>
      </Section>
      <Section title="Whose work it stands on">
        <p>
          Typefaces, under the SIL Open Font License:{' '}
          {fonts.map(({ name, file }, index) => (
            <span key={file}>
              {index > 0 ? ', ' : ''}
              <a href={file}>{name}</a>
            </span>
          ))}
          . What keeps the program in the browser is <a href="licences/workbox.txt">Workbox</a>,
          under the MIT licence.
        </p>
        <Licences />
      </Section>
    </div>
  )
}

function OfflineWords() {
  const ready = useStore(offline, (state) => state.ready)
  const failure = useStore(offline, (state) => state.failure)
  if (ready)
    return (
      <p>
        The program is kept in this browser: every place opens without a network. A newer version is
        offered, and waits until you take it. The browser’s menu can install it like any other
        program.
      </p>
    )
  return (
    <p>
      This browser does not keep the program yet: without a network the page does not open.{' '}
      {failure ?? 'It needs an address that begins with https, or this machine’s own.'}
    </p>
  )
}

function Licences() {
  const [read, setRead] = useState<{ licences: Licence[] } | { failure: string } | null>(null)
  useEffect(() => {
    let here = true
    readLicences()
      .then((licences) => here && setRead({ licences }))
      .catch((cause: unknown) => here && setRead({ failure: String(cause) }))
    return () => {
      here = false
    }
  }, [])
  if (!read) return null
  if ('failure' in read)
    return (
      <ErrorNote title="The list of licences could not be read.">
        It is the file licences/dependencies.json beside this page. {read.failure}
      </ErrorNote>
    )
  return (
    <ul className={styles.licences}>
      {read.licences.map(({ name, version, identifier, text }) => (
        <li key={`${name} ${version}`}>
          <details>
            <summary>
              {name} {version} <span className={styles.soft}>{identifier}</span>
            </summary>
            <pre>{text}</pre>
          </details>
        </li>
      ))}
    </ul>
  )
}
