import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strFromU8, unzipSync } from 'fflate'
import { afterAll, expect, test } from 'vitest'
import { packageLms } from '../../src/command/package-lms.ts'
import { endOf, endOfProcess } from './end-of.ts'

const folder = mkdtempSync(join(tmpdir(), 'tackstair-package-'))
const page = join(folder, 'page.html')
writeFileSync(page, '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; img-src data:">')
const notThePage = join(folder, 'other.html')
writeFileSync(notThePage, '<p>Something else</p>')
afterAll(() => rmSync(folder, { recursive: true }))

test('makes a zip of what was chosen', async () => {
  const out = join(folder, 'some.zip')
  const wish = ['--standard', 'scorm-1.2', '--lessons', 'tack,contamination', '--drills', '2', '--mastery', '0.8']
  const made = await endOf(packageLms, [...wish, '--page', page, '--out', out])
  expect(made).toMatchObject({ code: 0, err: '' })
  expect(made.out).toMatch(/scorm-1\.2, 2 lessons, 2 drills, \d+ kB/)
  const files = unzipSync(readFileSync(out))
  expect(strFromU8(files['imsmanifest.xml'])).toContain('lessons=tack,contamination&amp;drills=2&amp;mastery=0.8')
  expect(strFromU8(files['README.txt'])).toContain('- Tack: how hard an ink resists')
})

test('holds the whole course and no drill, and lies where it was made, where nothing else is said', async () => {
  const made = await endOfProcess('package:lms', ['--standard', 'cmi5', '--page', page], '', folder)
  expect(made).toMatchObject({ code: 0, err: '' })
  expect(made.out).toMatch(/^tackstair-cmi5\.zip: cmi5, 17 lessons, 0 drills, \d+ kB\n$/)
  expect(Object.keys(unzipSync(readFileSync(join(folder, 'tackstair-cmi5.zip'))))).toContain('cmi5.xml')
})

test('tells all that may be given', async () => {
  const { code, out } = await endOf(packageLms, ['--help'])
  expect(code).toBe(0)
  for (const option of ['--standard', '--lessons', '--drills', '--mastery', '--page', '--out'])
    expect(out).toContain(option)
  expect(out).toContain('Lessons: press-sheet, ')
})

test('says in words what is wrong, what is allowed and what was probably meant', async () => {
  const wrong: readonly [args: string[], said: RegExp][] = [
    [[], /give --standard \(scorm-1\.2, scorm-2004, cmi5\)/],
    [['--standard', 'scorm-1.3'], /scorm-1\.3 is none; allowed are .*did you mean scorm-1\.2\?/],
    [['--standard', 'cmi5', '--lessons', 'tak'], /tak is no lesson of the course; .*did you mean tack\?/],
    [['--standard', 'cmi5', '--lessons', 'none'], /nothing is in the package/],
    [['--lessons', 'tack'], /--standard is missing; allowed are scorm-1\.2, scorm-2004, cmi5/],
    [['--standrad', 'cmi5'], /--standrad/],
    [['--standard', 'cmi5', '--lessons', 'tack,,contamination'], /nothing is no lesson of the course/],
    [['--standard', 'cmi5', '--mastery', '80'], /80 is not allowed; allowed are numbers from 0 to 1/],
    [['--standard', 'cmi5', '--page', notThePage], /is not the page in one file; make it by npm run build:file/],
    [['--standard', 'cmi5', '--page', page, '--out', folder], /cannot be written \(.*\); give the name of a file/],
    [['--standard', 'cmi5', '--drills', '99'], /99 is not allowed; allowed are whole numbers from 0 to 20/],
    [['--standard', 'cmi5', '--page', join(folder, 'none.html')], /is not there; make it by npm run build:file/],
  ]
  for (const [args, said] of wrong) {
    const { code, out, err } = await endOf(packageLms, args)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(said)
  }
})
