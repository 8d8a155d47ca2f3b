/** What is said of working without a network, and of newer versions. */
export const offline = {
  'offline.newVersion': 'A newer version of this page is ready. Taking it loads the page again; your set-up is kept.',
  'offline.take': 'Take the newer version',
  'offline.later': 'Later',
  'offline.replaced': 'Another tab took a newer version. This one goes on as it is until you load it again.',
  'offline.close': 'Close',
} as const
