/** What a change of the language does to the page: the document says which it is, and every element draws itself anew. */
import { LitElement } from 'lit'
import { comfort } from './comfort.ts'
import { chooseLanguage, language, onLanguage } from './language.ts'
import { wantedLanguage } from './wanted-language.ts'
import { didNotArrive } from './did-not-arrive.ts'

/** Opens the page in the language wanted, and from then on follows what is chosen here or in another tab. */
export async function beginLanguage(): Promise<void> {
  onLanguage(() => {
    const { tag, direction } = language()
    document.documentElement.lang = tag
    document.documentElement.dir = direction
    drawAnew(document)
  })
  let chosen = comfort().settings.language
  comfort().subscribe(() => {
    if (comfort().settings.language === chosen) return
    chosen = comfort().settings.language
    void take(wantedLanguage())
  })
  await take(wantedLanguage())
}

/** Where the words of a language do not arrive, the page stays in the one it is in. */
async function take(tag: string): Promise<void> {
  try {
    await chooseLanguage(tag)
  } catch (error) {
    if (!didNotArrive(error)) throw error
  }
}

/** Nothing is taken down: what an element holds, it keeps. Those that show texts they once made see `language` changed. */
function drawAnew(root: ParentNode): void {
  for (const element of root.querySelectorAll('*')) {
    if (element instanceof LitElement) element.requestUpdate('language', null)
    if (element.shadowRoot) drawAnew(element.shadowRoot)
  }
}
