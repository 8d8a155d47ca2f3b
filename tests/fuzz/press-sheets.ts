/** Readings of somebody's press sheet as comma separated values: filled-in templates, spoilt; and any text at all. */
import fc from 'fast-check'
import { readSheetFile, separators, sheetTemplate } from '../../src/measure/sheet-file.ts'
import { sentence } from '../../src/command/sentence.ts'
import { finite, spoken, tell } from './hold.ts'
import { anyText, oddTexts, spoiltText, textEdits } from './spoil-text.ts'
import { subject } from './subject.ts'

const anyInks = fc.oneof(
  fc.constantFrom(['black', 'cyan', 'magenta', 'yellow'], ['=1+1', '-x', '+y', '@z'], ['a+b', 'a', 'b', 'paper']),
  fc.uniqueArray(fc.string({ minLength: 1, maxLength: 12 }), {
    minLength: 2,
    maxLength: 8,
    selector: (name) => name.toLowerCase(),
  }),
)
const reading = fc.oneof(
  { weight: 6, arbitrary: fc.nat(300).map((hundredths) => (hundredths / 100).toFixed(2)) },
  { weight: 1, arbitrary: fc.constantFrom('1,25', ' 0.4 ', '-0.01', '1e-3', '', '4', ...oddTexts) },
)

const filledIn = fc
  .tuple(anyInks, fc.constantFrom(...separators), fc.array(reading, { minLength: 3, maxLength: 40 }))
  .map(([inks, separator, typed]) => {
    let next = 0
    const rows = sheetTemplate(inks, separator).split('\r\n')
    const blank = separator.repeat(4)
    const text = rows.map((row) =>
      row.replace(blank, () => [0, 1, 2].map(() => `${separator}${typed[next++ % typed.length]}`).join('') + separator),
    )
    return { inks, text: text.join('\r\n') }
  })

const anySheet = fc.oneof(
  { weight: 1, arbitrary: filledIn },
  {
    weight: 5,
    arbitrary: fc
      .tuple(filledIn, textEdits)
      .map(([{ inks, text }, edits]) => ({ inks, text: spoiltText(text, edits) })),
  },
  { weight: 1, arbitrary: fc.record({ inks: anyInks, text: anyText }) },
  { weight: 1, arbitrary: fc.record({ inks: anyInks, text: anyText.map((text) => `patch,red,green,blue\n${text}`) }) },
)

export const pressSheets = subject('press sheets', 2500, anySheet, ({ inks, text }) => {
  const given = [...inks, text].join(' ')
  const read = readSheetFile(text, inks)
  for (const { line, said } of read.problems) {
    if (!(line >= 1)) tell(`A problem stands in line ${line}.`)
    spoken(sentence(said), given)
  }
  if ('refused' in read) {
    spoken(sentence(read.refused), given)
    return
  }
  finite(read.sheet)
  const densities = read.sheet.patches.flatMap((patch) => Object.values(patch.densities))
  if (densities.some((density) => density < 0)) tell('A density below 0 is taken.')
})
