/** Earlier attempts that the learning system no longer takes: told to their learner, who may save or remove each. */
import { LitElement, css, html, nothing } from 'lit'
import type { Aside } from '../../report/learning-system/aside-shelf.ts'
import { daysAside, mostAside } from '../../report/learning-system/aside-shelf.ts'
import type { Visit } from '../../report/learning-system/visit.ts'
import type { Work } from '../../report/learning-system/work.ts'
import { language } from '../language.ts'
import { courseLesson } from '../lessons/course-files.ts'
import { saveWorkAsResult } from '../lessons/hand-in.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

export class AsideList extends LitElement {
  static override properties = {
    visit: { attribute: false },
    removed: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      details {
        padding: 4px 0;
      }
      p {
        max-width: 90ch;
        margin: 4px 0;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 12px;
        align-items: center;
        margin: 4px 0;
      }
      li > span {
        flex: 0 1 60ch;
      }
    `,
  ]

  declare visit: Visit
  /** the one removed last, which can be put back until the page is closed */
  declare protected removed: Aside | null

  constructor() {
    super()
    this.removed = null
  }

  override render() {
    const { aside } = this.visit
    if (!aside || (aside.list.length === 0 && !this.removed)) return nothing
    const { list, crowdedOut, keeps } = aside
    return html`<details open>
      <summary>${say('system.aside.title', { count: list.length })}</summary>
      ${
        list.length === 0
          ? nothing
          : html`<p>${say('system.aside.is', { where: keeps ? 'browser' : 'page', days: daysAside })}</p>`
      }
      ${crowdedOut.map(
        ({ entries }) =>
          html`<p>${say('system.aside.crowdedOut', { moment: sayMoment(lastOf(entries)), most: mostAside })}</p>`,
      )}
      <ul>
        ${list.map((each) => this.#attempt(each, aside.workIn(each)))}
      </ul>
      ${
        this.removed
          ? html`<p role="status">
              ${say('system.aside.removed', { moment: sayMoment(lastOf(this.removed.entries)) })}
              <button type="button" @click=${this.#putBack}>${say('system.aside.putBack')}</button>
            </p>`
          : nothing
      }
    </details>`
  }

  #attempt(aside: Aside, work: Work | null) {
    const moment = sayMoment(lastOf(aside.entries))
    const about = [say('system.aside.of', { moment, answers: aside.entries.length }), ...(work ? titlesOf(work) : [])]
    const named = (words: string) => `${words}: ${moment}`
    return html`<li>
      <span>${about.join(' · ')}</span>
      ${
        work
          ? html`<button
              type="button"
              aria-label=${named(say('system.aside.save'))}
              @click=${() => this.#save(aside, work)}
            >
              ${say('system.aside.save')}
            </button>`
          : nothing
      }
      <button type="button" aria-label=${named(say('system.aside.remove'))} @click=${() => this.#remove(aside)}>
        ${say('system.aside.remove')}
      </button>
    </li>`
  }

  /** The attempt is a learner of its own on the board, so that neither attempt takes the other's place there. */
  #save({ attempt, entries }: Aside, work: Work): void {
    const lessons = Object.entries(work.lessons).map(([id, { progress }]) => ({ lesson: courseLesson(id), progress }))
    saveWorkAsResult(attempt, this.visit.opened?.learner ?? '', lessons, work.drills, lastOf(entries))
  }

  #remove(aside: Aside): void {
    this.removed = aside
    this.visit.aside?.remove(aside)
  }

  readonly #putBack = (): void => {
    if (this.removed) this.visit.aside?.putBack(this.removed)
    this.removed = null
  }
}

/** ms since 1970: the last answer that was not received. */
function lastOf(entries: Aside['entries']): number {
  return Math.max(...entries.map(({ at }) => at))
}

function titlesOf({ lessons, drills }: Work): string[] {
  const titles = Object.keys(lessons).map((id) => courseLesson(id).title)
  return [...titles, ...(drills.length > 0 ? [say('system.aside.drills', { count: drills.length })] : [])]
}

function sayMoment(at: number): string {
  return new Intl.DateTimeFormat(language().tag, { dateStyle: 'medium', timeStyle: 'short' }).format(at)
}

customElements.define('tack-aside-list', AsideList)
