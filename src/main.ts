import './ui/font.css'
import './ui/tokens.css'
import { Session } from './session/session.ts'
import { OfflineNotice } from './ui/offline-notice.ts'
import { beginLanguage } from './ui/page-language.ts'
import { Page } from './ui/page.ts'

await beginLanguage()

const page = new Page()
page.session = new Session()
document.body.append(page, new OfflineNotice())
