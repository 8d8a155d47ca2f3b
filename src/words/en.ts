/** Every sentence on the page, in English; one file for each part of it. */
import { bench } from './en/bench.ts'
import { board } from './en/board.ts'
import { cautions } from './en/cautions.ts'
import { checker } from './en/checker.ts'
import { colour } from './en/colour.ts'
import { comfort } from './en/comfort.ts'
import { drillRoom } from './en/drill-room.ts'
import { drills } from './en/drills.ts'
import { firstLook } from './en/first-look.ts'
import { instruments } from './en/instruments.ts'
import { language } from './en/language.ts'
import { learningSystem } from './en/learning-system.ts'
import { lecture } from './en/lecture.ts'
import { lesson } from './en/lesson.ts'
import { lessons } from './en/lessons.ts'
import { link } from './en/link.ts'
import { measure } from './en/measure.ts'
import { names } from './en/names.ts'
import { nip } from './en/nip.ts'
import { offline } from './en/offline.ts'
import { orders } from './en/orders.ts'
import { page } from './en/page.ts'
import { picture } from './en/picture.ts'
import { problems } from './en/problems.ts'
import { rigs } from './en/rigs.ts'
import { run } from './en/run.ts'
import { strip } from './en/strip.ts'
import { tools } from './en/tools.ts'
import { trials } from './en/trials.ts'
import { tables } from './en/tables.ts'
import { workings } from './en/workings.ts'

export const en = {
  ...bench,
  ...board,
  ...cautions,
  ...checker,
  ...colour,
  ...comfort,
  ...drillRoom,
  ...drills,
  ...firstLook,
  ...instruments,
  ...language,
  ...learningSystem,
  ...lecture,
  ...lesson,
  ...lessons,
  ...link,
  ...measure,
  ...names,
  ...nip,
  ...offline,
  ...orders,
  ...page,
  ...picture,
  ...problems,
  ...rigs,
  ...run,
  ...strip,
  ...tools,
  ...trials,
  ...tables,
  ...workings,
} as const
