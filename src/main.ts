import './ui/font.css'
import './ui/tokens.css'
import { Session } from './session/session.ts'
import { OfflineNotice } from './ui/offline-notice.ts'
import { beginLanguage } from './ui/page-language.ts'
import { Page } from './ui/page.ts'

// The single file does without: no word of the page's own needs further letters.
if (import.meta.env.MODE !== 'file') void import('./ui/font-further.css')

await beginLanguage()

const page = new Page()
page.session = new Session()
document.body.append(page, new OfflineNotice())
