/** What the licences of the parts that are shipped may be: those that ask for no more than to be named. */
import satisfies from 'spdx-satisfies'

/** SPDX names. Copyleft licences, and any that nobody here has read, are not among them. */
const allowed = ['0BSD', 'Apache-2.0', 'BlueOak-1.0.0', 'BSD-2-Clause', 'BSD-3-Clause', 'CC0-1.0', 'ISC', 'MIT']

/** As the bundler collects them: `## name - version (licence)`, then the licence's text. */
const heading = /^## (\S+) - (\S+)(?: \((.+)\))?$/gm

export interface LicenceFindings {
  /** parts looked at */
  parts: number
  problems: string[]
}

/** Looks through the collected licences of a bundle; a bundle without any part is a problem too. */
export function checkLicences(collected: string): LicenceFindings {
  const parts = Array.from(collected.matchAll(heading), ([, name, version, licence]) => ({ name, version, licence }))
  const problems = parts.flatMap(({ name, version, licence }) => {
    const wrong = problemOf(licence)
    return wrong === undefined ? [] : [`${name} ${version} ${wrong}; allowed are ${allowed.join(', ')}.`]
  })
  if (parts.length === 0) problems.push('No licence is collected at all: was the page built?')
  return { parts: parts.length, problems }
}

function problemOf(licence: string | undefined): string | undefined {
  if (licence === undefined) return 'names no licence'
  try {
    return satisfies(licence, allowed) ? undefined : `is under ${licence}`
  } catch (error) {
    // The library throws on what is no SPDX expression, such as "SEE LICENSE IN FILE".
    if (!(error instanceof Error)) throw error
    return `names a licence that is no SPDX expression: ${licence}`
  }
}
