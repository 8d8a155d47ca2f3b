/** The first ten seconds, for somebody who knows no word of the trade. */
export const firstLook = {
  'first.before':
    'This sheet of paper carries {first} ink, still wet. A rubber blanket is about to press {second} ink onto it and pull away.',
  'first.after':
    '{share, select, most {Most} part {Some} other {Little}} of the {second} stayed on the sheet: {stayed} of the ink that it leaves on bare paper. Of the {first} that lay there, the blanket pulled {lifted} back off.',
  'first.inks':
    'First {first}, tack {firstTack}. Then {second}, tack {secondTack}. Tack is how hard a wet ink resists being pulled apart.',
  'first.scale':
    'Drawn far taller than it is: 1 µm is a thousandth of a millimetre. Hatched, below 0: ink that the paper has taken in.',
  'first.because':
    'As the blanket leaves, the film that resists least is pulled apart. Here {second}, on top, resisted more than the {first} below: so the {first} gave way, and the {second} left with it.',
  'first.lesson': 'Start from the beginning: lesson 1',
  'first.print': 'Print the {second} on top',
  'first.swap': 'Swap the two inks and print again',
  'first.open': 'Open the bench',
  'first.why': 'Why?',
  'first.skip': 'Skip to the bench',
} as const
