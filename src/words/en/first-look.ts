/** The first ten seconds, for somebody who knows no word of the trade. */
export const firstLook = {
  'first.before':
    'This sheet of paper carries {first} ink, still wet. A rubber blanket is about to press {second} ink onto it and pull away.',
  'first.after':
    '{share, select, most {Most} part {Some} other {Little}} of the {second} stayed: {stayed} of what it leaves on bare paper. It pulled {lifted} of the wet {first} back off the sheet.',
  'first.print': 'Print the {second} on top',
  'first.swap': 'Swap the two inks and print again',
  'first.open': 'Open the bench',
  'first.why': 'Why?',
  'first.skip': 'Skip to the bench',
} as const
