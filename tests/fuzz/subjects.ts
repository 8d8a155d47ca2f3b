/** Everything the fuzz tries. */
import { formulas } from './formulas.ts'
import { resultFiles, statementExports } from './handed-in.ts'
import { courses, lessons } from './lessons.ts'
import { links } from './links.ts'
import { pressSheets } from './press-sheets.ts'
import { keptInBrowser, savedFiles } from './saved-files.ts'
import { ordering, running, solving } from './set-ups.ts'
import type { Subject } from './subject.ts'

export const subjects: readonly Subject[] = [
  links,
  savedFiles,
  keptInBrowser,
  lessons,
  courses,
  pressSheets,
  resultFiles,
  statementExports,
  formulas,
  solving,
  ordering,
  running,
]
