/** The page around the views. */
export const page = {
  'page.title': 'Tackstair',
  'page.views': 'Parts of the page',
  'page.bench': 'Bench',
  'page.strip': 'Strip',
  'page.orders': 'Orders',
  'page.trials': 'Trials',
  'page.run': 'Run chart',
  'page.lessons': 'Lessons',
  'page.drills': 'Fault drills',
  'page.instruments': 'Instruments',
  'page.lecture': 'Lecture',
  'page.glossary': 'Glossary',
  'page.loading': 'Loading…',
  'page.notLoaded':
    'This part of the page could not be loaded. Check the connection and press its name again; your set-up is kept.',
  'page.linkProblems': 'Not all of the link could be used',
  'page.close': 'Close',
  'page.firstLook': 'First look',

  'glossary.heading': 'Words of the trade',
  'glossary.find': 'Find a word',
  'glossary.count': '{count, plural, =0 {No word fits.} one {# word} other {# words}}',
  'glossary.see': 'Where to see it: {see}',
  'glossary.related': 'See also:',
  'glossary.source': 'Source: {source}',
} as const
