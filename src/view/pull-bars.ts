/**
 * How much pull each plane bears, one bar a plane in the order of the stack, and the pull that grows in all of them
 * alike as the nip opens, until the weakest gives.
 */
import type { BenchPicture } from './picture.ts'
import { layerInks } from './layer-inks.ts'
import { pullGrown } from './nip-curve.ts'
import type { SectionLayout } from './section-layout.ts'
import type { Shape } from './shapes.ts'
import { rectangle, stroke, textWidth } from './shapes.ts'

interface Bar {
  letter: string
  /** null: paper */
  fill: number | null
  /** tack units */
  bears: number
}

/** Top of the stack first. */
function barsOf(picture: BenchPicture, unit: number): Bar[] {
  const { accounts, words } = picture
  const inks = layerInks(picture)
  const { films, blanket, strength } = accounts[unit]
  const planes = [blanket, ...films.toReversed()].flatMap(({ unit: layer, pull }): Bar[] =>
    pull === null ? [] : [{ letter: inks[layer].letter, fill: inks[layer].fill, bears: pull }],
  )
  return [...planes, { letter: words.paper, fill: null, bears: strength }]
}

export function pullBars(
  picture: BenchPicture,
  { bars: left, barRoom, floor, letters }: Pick<SectionLayout, 'bars' | 'barRoom' | 'floor' | 'letters'>,
  phase: number,
): Shape[] {
  if (left === null) return []
  const { theme, words } = picture
  const bars = barsOf(picture, picture.unit)
  // One scale for all units, so that a bar is as long in one as in another.
  const strongest = Math.max(...picture.accounts.flatMap((_, unit) => barsOf(picture, unit)).map(({ bears }) => bears))
  const weakest = Math.min(...bars.map(({ bears }) => bears))
  const now = weakest * pullGrown(phase)
  const row = Math.min(letters * 2, (floor - letters * 2) / bars.length)
  const thick = 0.55 * row
  const start = left + letters * 1.6
  const label = ({ letter, fill, bears }: Bar) => `${fill === null ? `${letter} ` : ''}${words.tack(bears)}`
  const full = barRoom - (start - left) - 6 - Math.max(...bars.map((bar) => textWidth(label(bar), letters)))
  const top = letters * 2.4
  return [
    { kind: 'lettering', text: words.pull, x: left, y: 6, size: letters, colour: theme.graphite, anchor: [0, 0] },
    ...bars.flatMap((bar, i): Shape[] => {
      const { letter, fill, bears } = bar
      const y = top + i * row
      const length = (full * bears) / strongest
      const gives = bears === weakest && now >= weakest
      return [
        rectangle(start, y, length, thick, { fill: theme.ground, line: theme.graphite, width: 1.25 }),
        rectangle(start, y, (full * Math.min(now, bears)) / strongest, thick, {
          fill: fill ?? theme.paper,
          line: theme.graphite,
          width: 1.25,
        }),
        ...(gives ? [stroke([start + length, y - 4, start + length, y + thick + 4], theme.accent, 3)] : []),
        {
          kind: 'lettering',
          text: fill === null ? '' : letter,
          x: left,
          y: y + thick / 2,
          size: letters,
          colour: theme.graphite,
          anchor: [0, 0.5],
          bold: true,
        },
        {
          kind: 'lettering',
          text: label(bar),
          x: start + length + 6,
          y: y + thick / 2,
          size: letters - 1,
          colour: theme.graphite,
          anchor: [0, 0.5],
        },
      ]
    }),
  ]
}
