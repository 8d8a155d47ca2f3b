/** The first ten seconds, for somebody who knows no word of the trade. */
export const firstLook = {
  'first.before':
    'This sheet of paper carries {first} ink, still wet. A rubber blanket is about to press {second} ink onto it and pull away.',
  'first.after':
    '{share, select, most {The {second} film was pulled apart in its middle, as always: half went back on the blanket, half stayed. That is} part {Only in some places was the {second} film pulled apart; elsewhere all of it went back on the blanket. The sheet got} other {Only in few places was the {second} film pulled apart; elsewhere all of it went back on the blanket. The sheet got}} {stayed} of what bare paper would get. Of the {first}, the blanket took {lifted} back off.',
  'first.inks':
    'First {first}, tack {firstTack}, which is {falls, select, true {high} other {low}}. Then {second}, tack {secondTack}, which is {falls, select, true {low} other {high}}. Tack is how hard a wet ink resists being pulled apart.',
  'first.scale':
    'Drawn far taller than it is: 1 µm is a thousandth of a millimetre. Hatched, below 0: ink that the paper has taken in.',
  'first.because':
    'As the blanket leaves, the film that resists least is pulled apart. Here {second}, on top, resisted more than the {first} below: so the {first} gave way, and the {second} left with it.',
  'first.lesson': 'Start from the beginning: lesson 1',
  'first.print': 'Print the {second} on top',
  'first.swap': 'Swap the two inks and print again',
  'first.open': 'Open the bench',
  'first.why': 'Why?',
  'first.skip': 'Skip this and try inks yourself',
} as const
