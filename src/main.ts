import './ui/font.css'
import './ui/tokens.css'
import { Session } from './session/session.ts'
import { OfflineNotice } from './ui/offline-notice.ts'
import { beginLanguage } from './ui/page-language.ts'
import { lectureOfSpeaker } from './ui/lecture/speaker-address.ts'
import { Page } from './ui/page.ts'

// The single file does without: no word of the page's own needs further letters.
if (import.meta.env.MODE !== 'file') void import('./ui/font-further.css')

await beginLanguage()

const lecture = lectureOfSpeaker(location.hash)
if (lecture === null) {
  const page = new Page()
  page.session = new Session()
  document.body.append(page, new OfflineNotice())
} else {
  const { SpeakerWindow } = await import('./ui/lecture/speaker-window.ts')
  const speaker = new SpeakerWindow()
  Object.assign(speaker, { lecture, now: () => Date.now() })
  document.body.append(speaker)
}
