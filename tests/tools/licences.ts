/** Checks the licences of all that the built page is made of; run after the build. */
import { readFileSync } from 'node:fs'
import { checkLicences } from './licence-rules.ts'

const dist = new URL('../../dist/', import.meta.url)
const { parts, problems } = checkLicences(readFileSync(new URL('licences.md', dist), 'utf8'))
const further = { 'licence-of-typeface.txt': /SIL Open Font License/i, 'licence-of-offline-worker.txt': /MIT/ }
for (const [file, title] of Object.entries(further)) {
  if (!title.test(readFileSync(new URL(file, dist), 'utf8'))) problems.push(`${file} is not the licence it should be.`)
}
for (const problem of problems) console.error(problem)
console.log(`${parts} parts and ${Object.keys(further).length} files looked at, ${problems.length} problems`)
if (problems.length > 0) process.exitCode = 1
