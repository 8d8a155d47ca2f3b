/** The result file a learner hands in: name and group, if wanted, and the button that saves it. */
import { css, html } from 'lit'
import { resume } from '../../lesson/progress.ts'
import { drillDeskOf } from '../../session/drill-desk.ts'
import { fileNameOf } from '../../session/file.ts'
import type { Learning } from '../../session/learning.ts'
import { learningOf, ownKey } from '../../session/learning.ts'
import type { Done, LessonDone } from '../../session/make-result.ts'
import { makeResult, writeResult } from '../../session/make-result.ts'
import { longestName } from '../../session/result-format.ts'
import { browserStorage } from '../browser-storage.ts'
import { say } from '../say.ts'
import type { Session } from '../../session/session.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { checked, course, courseLesson, courseMark } from './course-files.ts'
import { lessonStyles } from './lesson-styles.ts'

export class HandIn extends SessionElement {
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host {
        display: grid;
        gap: 8px;
      }
      p {
        max-width: 70ch;
      }
      input {
        width: 15rem;
        max-width: 100%;
        padding: 0 8px;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  override render() {
    const learning = this.#learning
    return html`
      <h3>${say('board.handIn')}</h3>
      <p>${say('board.handInIs')}</p>
      <div class="row">
        <label class="row"
          >${say('lessons.name')}
          <input
            type="text"
            autocomplete="off"
            maxlength=${longestName}
            .value=${learning.name}
            @input=${(event: Event) => (learning.name = typed(event))}
          />
        </label>
        <label class="row"
          >${say('board.groupName')}
          <input
            type="text"
            autocomplete="off"
            maxlength=${longestName}
            .value=${learning.group}
            @input=${(event: Event) => (learning.group = typed(event))}
          />
        </label>
      </div>
      <div class="row">
        <button type="button" class="main" @click=${this.#save}>${say('board.handInSave')}</button>
      </div>
    `
  }

  get #learning(): Learning {
    return learningOf(this.session, browserStorage)
  }

  readonly #save = (): void => saveResultFile(this.session)
}

/** Hands the learner's result file to the person. */
export function saveResultFile(session: Session): void {
  const learning = learningOf(session, browserStorage)
  const { name, group } = learning
  const learner = { id: learning.learnerId(newId), name, group }
  const drills = drillDeskOf(session, browserStorage, () => Date.now()).state.record
  save({ learner, lessons: lessonsDone(learning), drills }, Date.now())
}

/** The same of work that is not what this page has open: lessons of the course, as they stood at `at` (ms since 1970). */
export function saveWorkAsResult(
  id: string,
  name: string,
  lessons: readonly Omit<LessonDone, 'own'>[],
  drills: Done['drills'],
  at: number,
): void {
  save({ learner: { id, name }, lessons: lessons.map((each) => ({ ...each, own: false })), drills }, at)
}

function save(done: Omit<Done, 'course'>, at: number): void {
  const result = makeResult({ ...done, course: { title: course.title, version: courseMark() } }, at)
  const { name = '' } = done.learner
  saveText(fileNameOf(say('board.fileName', { name }), '.result.json'), 'application/json', writeResult(result))
}

/** What was begun of the course, in its order, and of the lessons of one's own. */
function lessonsDone(learning: Learning): LessonDone[] {
  const own = Object.entries(learning.own).flatMap(([id, text]) => {
    const { lesson } = checked(text)
    return lesson ? [{ key: ownKey(id), lesson, own: true }] : []
  })
  const ofCourse = course.lessons.map((id) => ({ key: id, lesson: courseLesson(id), own: false }))
  return [...ofCourse, ...own].flatMap(({ key, lesson, own: isOwn }) => {
    const progress = resume(lesson, learning.lesson(key)?.progress)
    return progress ? [{ lesson, own: isOwn, progress }] : []
  })
}

/** Pages that are opened from a file have no randomUUID. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12))
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}

function typed(event: Event): string {
  return (event.target as HTMLInputElement).value.trim()
}

customElements.define('tack-hand-in', HandIn)
