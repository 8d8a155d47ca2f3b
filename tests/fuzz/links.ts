/** Links: true ones with words, parts and values exchanged, spoilt texts of true ones, and any text at all. */
import fc from 'fast-check'
import { checkSetUp } from '../../src/press/check-setup.ts'
import { longestLink, readLink, writeLink } from '../../src/session/link.ts'
import { writeSetUp } from '../../src/session/write-setup.ts'
import { say } from '../../src/ui/say.ts'
import { anySetUp, anyView } from '../session/any-linked.ts'
import { same, spoken, tell } from './hold.ts'
import { anyText, oddTexts, spoiltText, textEdits } from './spoil-text.ts'
import { subject } from './subject.ts'

const trueLink = anySetUp.chain((setUp) => anyView(setUp.inks.length).map((view) => writeLink(setUp, view).text))

const partEdits = fc.array(
  fc.record({
    at: fc.nat(1000),
    how: fc.constantFrom('drop', 'double', 'exchange', 'odd', 'grow'),
    by: fc.nat(1000),
    odd: fc.oneof(fc.constantFrom(...oddTexts), fc.double().map(String)),
  }),
  { minLength: 1, maxLength: 4 },
)

/** Takes the link apart where its grammar does, so that what is wrong stands where something else is expected. */
const ofWrongParts = fc.tuple(trueLink, partEdits).map(([text, edits]) =>
  edits
    .reduce(
      (parts, { at, how, by, odd }) => {
        // Parts and the signs between them take turns.
        const place = 2 * (at % ((parts.length + 1) / 2))
        const other = 2 * (by % ((parts.length + 1) / 2))
        if (how === 'drop') return parts.toSpliced(place, 2)
        if (how === 'double') return parts.toSpliced(place, 0, parts[place], parts[other + 1] ?? '&')
        if (how === 'exchange') return parts.with(place, parts[other]).with(other, parts[place])
        if (how === 'odd') return parts.with(place, odd)
        return parts.with(place, `${parts[place]}${odd}`)
      },
      text.slice(1).split(/([&=,:])/),
    )
    .join(''),
)

const anyLink = fc.oneof(
  { weight: 3, arbitrary: ofWrongParts },
  { weight: 2, arbitrary: fc.tuple(trueLink, textEdits).map(([text, edits]) => spoiltText(text, edits)) },
  { weight: 1, arbitrary: anyText },
  { weight: 1, arbitrary: anyText.map((text) => `#v=1&inks=${text}`) },
)

export const links = subject('links', 2500, anyLink, (text) => {
  const link = readLink(text)
  if (link === null) return
  same(checkSetUp(writeSetUp(link.setUp)), { setUp: link.setUp })
  const again = writeLink(link.setUp, link.view).text
  if (again.length > longestLink) tell(`Written again, the link has ${again.length} characters.`)
  same(readLink(again)?.problems, [])
  for (const { message, values } of link.problems) spoken(say(message, values), text)
})
