/** Files: those this program saves with values exchanged, huge, nested deep, of other versions; drafts around them; any text. */
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { emptyShelf, writeShelf } from '../../src/measure/shelf.ts'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { readRecord, writeRecord } from '../../src/session/draft-record.ts'
import { readFile, writeFile } from '../../src/session/file.ts'
import type { Saved } from '../../src/session/saved.ts'
import { usableSettings } from '../../src/session/settings.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { anySetUp } from '../session/any-linked.ts'
import { anySaved } from '../session/any-saved.ts'
import { finite, ownWords, same, spoken, tell } from './hold.ts'
import { anyText, spoiltText, textEdits } from './spoil-text.ts'
import { spoiltTree, treeEdits } from './spoil-tree.ts'
import { subject } from './subject.ts'

const published = readFileSync(new URL('../session/files/version-1.tackstair.json', import.meta.url), 'utf8')

/** The fields of a file as they are written. */
const trueFile = fc.oneof(
  anySaved.map((saved) => JSON.parse(writeFile(saved)) as unknown),
  fc.constant(JSON.parse(published) as unknown),
  anySetUp.map(writeSetUp),
  anySetUp.map(({ inks }) => JSON.parse(writeShelf({ ...emptyShelf, inks })) as unknown),
)

const anyFile = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(trueFile, treeEdits).map(([file, edits]) => spoiltTree(file, edits)) },
  {
    weight: 2,
    arbitrary: fc.tuple(trueFile, textEdits).map(([file, edits]) => spoiltText(JSON.stringify(file), edits)),
  },
  { weight: 1, arbitrary: anyText },
)

function sound({ setUp, scenes, trials, ...rest }: Saved): void {
  const shown = scenes.flatMap((scene) => [scene.setUp, ...(scene.beside ? [scene.beside.setUp] : [])])
  for (const each of [...(setUp ? [setUp] : []), ...shown, ...trials.map((trial) => trial.setUp)]) {
    same(checkSetUp(writeSetUp(each)), { setUp: each })
  }
  finite(rest)
}

function readSoundly(text: string): void {
  const opened = readFile(text)
  if ('refused' in opened) {
    spoken(opened.refused.message, text)
    return
  }
  sound(opened.saved)
  for (const { message, said } of opened.problems) {
    spoken(message, text)
    ownWords(said)
  }
  if (opened.problems.length > 10_000) tell(`${opened.problems.length} problems are told of one file.`)
  // What has been taken from a file is legal, and can be saved and opened again.
  const again = readFile(writeFile(opened.saved))
  if ('refused' in again) return tell(`Saved again it is refused: ${again.refused.message}`)
  same(again, { saved: opened.saved, problems: [] })
}

export const savedFiles = subject('saved files', 2000, anyFile, readSoundly)

/** What the browser keeps: a draft's record around a file, and the settings. */
const anyKept = fc.oneof(
  fc.tuple(trueFile, treeEdits).map(([file, edits]) => spoiltTree({ savedAt: 5, file: JSON.stringify(file) }, edits)),
  fc
    .tuple(trueFile, textEdits)
    .map(([file, edits]) => spoiltText(writeRecord({ savedAt: 5, file: JSON.stringify(file) }), edits)),
  fc
    .tuple(fc.constant({ theme: 'dark', measures: ['m/min'], motion: 'full', sound: true, language: 'es' }), treeEdits)
    .map(([settings, edits]) => spoiltTree(settings, edits)),
  anyText,
)

export const keptInBrowser = subject('kept in the browser', 3000, anyKept, (text) => {
  const record = readRecord(text)
  if (record) readSoundly(record.file)
  let kept: unknown
  try {
    kept = JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return
    throw error
  }
  const settings = usableSettings(kept)
  same(usableSettings(JSON.parse(JSON.stringify(settings))), settings)
})
