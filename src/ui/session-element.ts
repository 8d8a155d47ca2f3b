/** What every element that shows the session has: the session, and a new picture whenever something in it has changed. */
import type { PropertyDeclarations } from 'lit'
import { LitElement } from 'lit'
import type { Control } from '../lesson/control.ts'
import type { Change } from '../session/change.ts'
import type { Session } from '../session/session.ts'
import { sayProblem } from './problem-words.ts'
import { drawInLaterTurn, isTurnFull } from './turns.ts'

export abstract class SessionElement extends LitElement {
  static override properties: PropertyDeclarations = { session: { attribute: false } }
  declare session: Session

  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.session.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  /** What comes into the page is drawn in turns, so that a slow machine answers in between. */
  protected override scheduleUpdate(): Promise<void> | undefined {
    // Changes of what is there already are drawn at once, as they belong together; but they fill the turn as well.
    const mustWait = isTurnFull() && !this.hasUpdated
    if (mustWait) return drawInLaterTurn(() => void super.scheduleUpdate())
    void super.scheduleUpdate()
    return undefined
  }

  /** Whether the open lesson keeps this control as it is, or the link leaves it out. */
  protected isClosed(control: Control): boolean {
    const { closed, hide } = this.session.look
    return closed.includes(control) || hide.includes(control)
  }

  /** Whether words that go by this term of the glossary may be shown: a lesson of the course says so only once it is explained. */
  protected knows(...terms: readonly string[]): boolean {
    const { known } = this.session.look
    return known === null || terms.every((term) => known.has(term))
  }

  /** Whether a control has its place: a lesson of the course leaves out what the learner cannot use in it. */
  protected isShown(...controls: readonly Control[]): boolean {
    return this.session.look.known === null || controls.some((control) => !this.isClosed(control))
  }

  /** Makes a change; returns the first reason why it cannot be, or null. */
  protected attempt(change: Change): string | null {
    const problems = this.session.change(change)
    return problems.length > 0 ? sayProblem(problems[0]) : null
  }
}
