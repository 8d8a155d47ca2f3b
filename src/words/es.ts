/** Every sentence on the page, in Spanish. Each area must hold every key of the English one, or nothing compiles. */
import type { en } from './en.ts'
import { bench } from './es/bench.ts'
import { board } from './es/board.ts'
import { cautions } from './es/cautions.ts'
import { checker } from './es/checker.ts'
import { colour } from './es/colour.ts'
import { comfort } from './es/comfort.ts'
import { drillRoom } from './es/drill-room.ts'
import { drills } from './es/drills.ts'
import { firstLook } from './es/first-look.ts'
import { instruments } from './es/instruments.ts'
import { language } from './es/language.ts'
import { learningSystem } from './es/learning-system.ts'
import { lecture } from './es/lecture.ts'
import { lesson } from './es/lesson.ts'
import { lessons } from './es/lessons.ts'
import { link } from './es/link.ts'
import { measure } from './es/measure.ts'
import { names } from './es/names.ts'
import { nip } from './es/nip.ts'
import { offline } from './es/offline.ts'
import { orders } from './es/orders.ts'
import { page } from './es/page.ts'
import { picture } from './es/picture.ts'
import { problems } from './es/problems.ts'
import { rigs } from './es/rigs.ts'
import { run } from './es/run.ts'
import { strip } from './es/strip.ts'
import { tools } from './es/tools.ts'
import { trials } from './es/trials.ts'
import { tables } from './es/tables.ts'
import { workings } from './es/workings.ts'
import type { Translated } from './translated.ts'

export const es: Translated<typeof en> = {
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
}
