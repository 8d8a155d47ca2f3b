/** `npm run --silent solve -- setup.json`: prints one set-up and reads its sheet, as JSON. */
import { runPress } from '../press/run.ts'
import { command } from './command.ts'
import { readSetUp } from './read-setup.ts'
import { solutionOf } from './solution.ts'

command('solve: give the file of one set-up, or - for standard input', ([file]) => {
  console.log(JSON.stringify(solutionOf(runPress(readSetUp(file))), null, 1))
})
