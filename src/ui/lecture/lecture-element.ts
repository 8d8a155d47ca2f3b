/** What the elements of the lecture share: the session's list of scenes, and a new picture whenever it has changed. */
import type { Lecture } from '../../session/lecture.ts'
import { lectureOf } from '../../session/lecture.ts'
import { SessionElement } from '../session-element.ts'

export abstract class LectureElement extends SessionElement {
  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.lecture.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  protected get lecture(): Lecture {
    return lectureOf(this.session)
  }
}
