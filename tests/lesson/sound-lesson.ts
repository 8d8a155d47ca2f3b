/** A small sound lesson, and the place of a piece of its text, for tests that break it. */

export const everyday = ['ink', 'paper', 'press', 'sheet', 'roller', 'cylinder', 'cyan', 'magenta']

export const soundLesson = `format: 1
id: small-lesson
title: A small lesson
language: en
minutes: 5
audience: Testers
assumes: [overprint, ink-film]
introduces: [tack]
objectives:
  - Change a tack.
sources:
  - common practice
cautions: [teaching-model]
start:
  inks:
    - { name: cyan, tack: 13 }
    - { name: magenta, tack: 13 }
  reading: first
show: [tack, order, patch]
lock: [order]
steps:
  - id: what
    kind: say
    text: |
      How strongly an ink resists is its
      **tack**. A low tack gives way.
    explains: [tack]
  - id: guess
    kind: predict
    text: Less tack on top. More film there?
    choices:
      - { id: more, text: More }
      - { id: less, text: Less, feedback: Look again. }
    right: more
    settledBy: lower
  - id: lower
    kind: expect
    text: Get the film of the overprint to 0.8.
    expect:
      - is: at least
        reading: { what: film, of: magenta, in: [cyan, magenta] }
        value: 0.8
        unit: um
    hints: [Lower it.]
    feedback:
      - when: { is: at least, reading: { what: tack, of: magenta }, value: 14, unit: tack units }
        say: That was up.
        after: [{ change: tack, of: magenta, to: 16 }]
  - id: number
    kind: expect
    text: Type the film.
    expect:
      - { is: number, reading: { what: film, of: magenta, in: [cyan, magenta] }, tolerance: 0.05, unit: um }
  - id: look
    kind: do
    text: Look at cyan.
    expect:
      - { is: patch, inks: [cyan] }
  - id: why
    kind: expect
    text: Put it in order.
    expect:
      - is: sequence
        items:
          - { id: second, text: Second }
          - { id: first, text: First }
          - { id: third, text: Third }
        right: [first, second, third]
    done: Well done.
solution:
  - { step: guess, choose: more }
  - { step: lower, changes: [{ change: tack, of: magenta, to: 10 }] }
  - { step: number, enter: 0.86 }
  - { step: look, changes: [{ change: patch, to: [cyan] }] }
  - { step: why, sequence: [first, second, third] }
`

/** The sound lesson with one piece of text changed; the piece must stand there. */
export function changed(from: string, to: string): string {
  if (!soundLesson.includes(from)) throw new Error(`the sound lesson does not hold ${from}`)
  return soundLesson.replace(from, () => to)
}

/** Line and column, from 1, of the first `piece` in `text`, found without the program's help. */
export function placeIn(text: string, piece: string): { line: number; col: number } {
  const at = text.indexOf(piece)
  if (at < 0) throw new Error(`${piece} does not stand in the text`)
  const before = text.slice(0, at).split('\n')
  return { line: before.length, col: before[before.length - 1].length + 1 }
}
