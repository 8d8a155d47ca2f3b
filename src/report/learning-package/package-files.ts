/**
 * The files of a package: its manifest, the page in one file, and a plain text for whoever opens the zip. The same page and
 * the same wishes give the same zip, bit for bit.
 */
import { strToU8, zipSync } from 'fflate'
import type { Standard } from '../learning-system/launch.ts'
import { cmi5Structure } from './cmi5-structure.ts'
import type { Contents } from './contents.ts'
import { pageFile, readmeFile } from './contents.ts'
import { manifest12 } from './manifest-12.ts'
import { manifest2004 } from './manifest-2004.ts'

const manifests: Readonly<Record<Standard, { file: string; write: (contents: Contents) => string }>> = {
  'scorm-1.2': { file: 'imsmanifest.xml', write: manifest12 },
  'scorm-2004': { file: 'imsmanifest.xml', write: manifest2004 },
  cmi5: { file: 'cmi5.xml', write: cmi5Structure },
}

/** The earliest day a zip can name; fflate reads it in the time zone it was made in, so it is the same everywhere. */
const noDay = new Date(1980, 0, 1)

/** `page` is the text of the page in one file, as built. Null where it is another file. */
export function packageZip(contents: Contents, page: string): Uint8Array | null {
  const { standard } = contents.launch
  const own = pageFor(standard, page)
  if (own === null) return null
  const { file, write } = manifests[standard]
  return zipSync(
    { [file]: strToU8(write(contents)), [pageFile]: strToU8(own), [readmeFile]: strToU8(contents.readme) },
    { level: 9, mtime: noDay },
  )
}

/** What the page may connect to: nothing as built. */
const policy = /(<meta http-equiv="Content-Security-Policy" content="default-src 'none'; )([^"]*)(">)/

/**
 * The page as it stands in the package. A cmi5 system speaks over the network, at an address that is not known before the
 * launch; the page shuts out every other address as soon as it is launched (ui/learning-system/narrow-policy.ts).
 */
export function pageFor(standard: Standard, page: string): string | null {
  if (!policy.test(page)) return null
  return standard === 'cmi5' ? page.replace(policy, '$1connect-src https: http:; $2$3') : page
}

/** A name for the zip. */
export function packageName(standard: Standard): string {
  return `tackstair-${standard}.zip`
}
