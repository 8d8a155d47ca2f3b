import { checkImports } from './import-rules.ts'

const { files, imports, problems } = await checkImports(process.cwd())
for (const problem of problems) console.error(problem)
console.log(`${files} files with ${imports} imports looked at, ${problems.length} problems`)
if (problems.length > 0) process.exitCode = 1
