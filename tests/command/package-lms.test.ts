import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strFromU8, unzipSync } from 'fflate'
import { afterAll, expect, test } from 'vitest'

const root = join(import.meta.dirname, '../..')
const folder = mkdtempSync(join(tmpdir(), 'tackstair-package-'))
const page = join(folder, 'page.html')
writeFileSync(page, '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; img-src data:">')
afterAll(() => rmSync(folder, { recursive: true }))

function run(...args: string[]) {
  const tsx = join(root, 'node_modules/.bin/tsx')
  const { status, stdout, stderr } = spawnSync(tsx, [join(root, 'src/command/package-lms.ts'), ...args], {
    encoding: 'utf8',
    cwd: folder,
  })
  return { status, stdout, stderr }
}

test('makes a zip of what was chosen', () => {
  const out = join(folder, 'some.zip')
  const wish = ['--standard', 'scorm-1.2', '--lessons', 'tack,contamination', '--drills', '2', '--mastery', '0.8']
  const made = run(...wish, '--page', page, '--out', out)
  expect(made).toMatchObject({ status: 0, stderr: '' })
  expect(made.stdout).toMatch(/scorm-1\.2, 2 lessons, 2 drills, \d+ kB/)
  const files = unzipSync(readFileSync(out))
  expect(strFromU8(files['imsmanifest.xml'])).toContain('lessons=tack,contamination&amp;drills=2&amp;mastery=0.8')
  expect(strFromU8(files['README.txt'])).toContain('- Tack: how hard an ink resists')
})

test('says in words what is wrong, what is allowed and what was probably meant', () => {
  const wrong: readonly [args: string[], said: RegExp][] = [
    [[], /give --standard \(scorm-1\.2, scorm-2004, cmi5\)/],
    [['--standard', 'scorm-1.3'], /scorm-1\.3 is none; allowed are .*did you mean scorm-1\.2\?/],
    [['--standard', 'cmi5', '--lessons', 'tak'], /tak is no lesson of the course; .*did you mean tack\?/],
    [['--standard', 'cmi5', '--lessons', 'none'], /nothing is in the package/],
    [['--standard', 'cmi5', '--drills', '99'], /99 is not allowed; allowed are whole numbers from 0 to 20/],
    [['--standard', 'cmi5', '--page', join(folder, 'none.html')], /is not there; make it by npm run build:file/],
  ]
  for (const [args, said] of wrong) {
    const { status, stdout, stderr } = run(...args)
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toMatch(said)
  }
})
