/** What is done with a shelf: entries put on it and taken off, and a press from it set up. Names differ by more than capitals. */
import type { Problem } from '../press/problem.ts'
import { checkSetUp } from '../press/check-setup.ts'
import type { SetUp } from '../press/setup.ts'
import type { Shelf, ShelfPress } from './shelf.ts'
import { writtenPaper } from './written-setup.ts'

type List = 'inks' | 'papers' | 'presses'
const lists: readonly List[] = ['inks', 'papers', 'presses']

function sameName(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase()
}

/** Puts more on the shelf, one entry or a whole other shelf; entries of the same name give way, and are named. */
export function putOnShelf(
  shelf: Shelf,
  more: Partial<Pick<Shelf, List>>,
): { shelf: Shelf; replaced: { list: List; name: string }[] } {
  const gaveWay = lists.flatMap((list) =>
    shelf[list]
      .filter((entry) => more[list]?.some((other) => sameName(entry.name, other.name)))
      .map(({ name }) => ({ list, name })),
  )
  const cleared = gaveWay.reduce((rest, { list, name }) => takeOffShelf(rest, list, name), shelf)
  return {
    shelf: {
      ...cleared,
      inks: [...cleared.inks, ...(more.inks ?? [])],
      papers: [...cleared.papers, ...(more.papers ?? [])],
      presses: [...cleared.presses, ...(more.presses ?? [])],
    },
    replaced: gaveWay,
  }
}

/** Takes the entry of this name off; a name that is not there changes nothing. */
export function takeOffShelf(shelf: Shelf, list: List, name: string): Shelf {
  return { ...shelf, [list]: shelf[list].filter((entry) => !sameName(entry.name, name)) }
}

/** The set-up with a press from the shelf in place of its own, and with the paper and inks that belong to that press. */
export function setUpWithPress(
  setUp: SetUp,
  { press, paper, inks }: ShelfPress,
): { setUp: SetUp } | { problems: Problem[] } {
  return checkSetUp({
    inks: inks ?? setUp.inks,
    paper: paper ?? writtenPaper(setUp.paper, setUp.paper.name),
    press,
    reading: setUp.reading,
    seed: setUp.seed,
  })
}
