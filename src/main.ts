import './ui/font.css'
import './ui/tokens.css'
import { Session } from './session/session.ts'
import { OfflineNotice } from './ui/offline-notice.ts'
import { beginLanguage } from './ui/page-language.ts'
import { lectureOfSpeaker } from './ui/lecture/speaker-address.ts'
import { startOnlyOwnScripts } from './ui/own-scripts.ts'
import { Page } from './ui/page.ts'

// The development server's own scripts come from anywhere, and it has no policy that would ask.
if (import.meta.env.PROD) startOnlyOwnScripts(import.meta.env.MODE === 'file')

// The single file does without: no word of the page's own needs further letters.
if (import.meta.env.MODE !== 'file') void import('./ui/font-further.css')

// Not awaited at the top level: the words of a language may lie in a file that waits for this one to be done.
void open()

async function open(): Promise<void> {
  await beginLanguage()

  // Packages hold the single file, and say in its address that a learning system opens it (report/learning-system/launch.ts).
  const isPackage = import.meta.env.MODE === 'file' && new URLSearchParams(location.search).has('standard')
  const bar = isPackage
    ? await (await import('./ui/learning-system/launch-visit.ts')).launchVisit(location.search)
    : null

  const lecture = lectureOfSpeaker(location.hash)
  if (lecture === null) {
    const page = new Page()
    page.session = new Session()
    if (bar) {
      bar.session = page.session
      document.body.append(bar)
    }
    document.body.append(page, ...(isPackage ? [] : [new OfflineNotice()]))
  } else {
    const { SpeakerWindow } = await import('./ui/lecture/speaker-window.ts')
    const speaker = new SpeakerWindow()
    Object.assign(speaker, { lecture, now: () => Date.now() })
    document.body.append(speaker)
  }
}
