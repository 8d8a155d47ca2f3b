/** A study that a person starts and may call off; it is called off when its element goes. */
import type { LitElement, ReactiveController } from 'lit'
import { html } from 'lit'
import type { Findings, Study, StudyKind } from '../../measure/study.ts'
import { startStudy } from '../../session/studying.ts'
import { KeptFocus } from '../kept-focus.ts'

export class OneStudy<Kind extends StudyKind> implements ReactiveController {
  readonly #host: LitElement
  #cancel: (() => void) | null = null

  constructor(host: LitElement) {
    this.#host = host
    host.addController(this)
    new KeptFocus(host)
  }

  hostDisconnected(): void {
    this.#stop()
  }

  start(asked: Study<Kind>, done: (found: Findings[Kind]) => void): void {
    this.#stop()
    this.#cancel = startStudy<Kind>(asked, {
      step: () => undefined,
      done: (found) => {
        this.#cancel = null
        done(found)
        this.#host.requestUpdate()
      },
    })
    this.#host.requestUpdate()
  }

  /** The button that starts it, or while it runs, that it does and the button that calls it off. */
  row(words: { go: string; running: string; cancel: string }, go: () => void) {
    return html`<div class="row">
      ${
        this.#cancel
          ? html`<progress aria-label=${words.running}></progress> <span>${words.running}</span>
              <button type="button" @click=${() => this.#stop()}>${words.cancel}</button>`
          : html`<button type="button" @click=${go}>${words.go}</button>`
      }
    </div>`
  }

  #stop(): void {
    this.#cancel?.()
    this.#cancel = null
    this.#host.requestUpdate()
  }
}
