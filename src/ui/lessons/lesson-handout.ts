/** A printable sheet of a lesson: what to do, figures to label, blanks, and the answers on a page of their own. */
import { LitElement, css, html, nothing } from 'lit'
import { handoutOf } from '../../lesson/handout.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { lessonStyles } from './lesson-styles.ts'
import { proseLine, proseView } from './prose-view.ts'
import { sectionFigure } from './section-figure.ts'

export class LessonHandout extends LitElement {
  static override properties = { lesson: { attribute: false } }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host {
        max-width: 51.25rem;
      }
      article {
        display: grid;
        gap: 12px;
        margin-top: 8px;
        padding: 24px 32px;
        background: #ffffff;
        color: #1c1b1a;
      }
      article + article {
        break-before: page;
      }
      article a {
        color: inherit;
      }
      .prose-text {
        font-size: 0.9375rem;
        line-height: 1.3125rem;
      }
      ol.steps,
      ol.blanks {
        display: grid;
        gap: 10px;
        padding-inline-start: 28px;
        list-style: decimal;
      }
      ol.blanks {
        gap: 16px;
      }
      ul.boxes {
        padding-inline-start: 24px;
        list-style: '☐ ';
      }
      ul.boxes li {
        padding-inline-start: 4px;
      }
      .steps .boxes {
        margin-top: 4px;
        font-size: 0.9375rem;
      }
      .steps > li,
      .blanks > li,
      figure {
        break-inside: avoid;
      }
      h3 {
        break-after: avoid;
      }
      figure {
        margin: 0;
      }
      figure svg {
        width: 100%;
        border: 1px solid #b9b2a6;
      }
      .small {
        display: grid;
        gap: 4px;
        break-inside: avoid;
        font-size: 0.8125rem;
        line-height: 1.125rem;
      }
      @media (max-width: 37.5em) {
        article {
          padding: 16px;
        }
      }
      @media print {
        .on-screen {
          display: none;
        }
        article {
          padding: 0;
        }
        figure {
          max-width: 34rem;
        }
      }
    `,
  ]

  declare lesson: Lesson

  override render() {
    const { title, objectives, intro, steps, figures, blanks, answers, cautions: ids, sources } = handoutOf(this.lesson)
    return html`
      <div class="row on-screen">
        <button type="button" class="main" @click=${() => window.print()}>${say('lessons.print')}</button>
        <button type="button" @click=${() => this.dispatchEvent(new Event('list'))}>${say('lessons.all')}</button>
      </div>
      <article>
        <p class="small">${say('lessons.nameLine')}</p>
        <h2 tabindex="-1">${title}</h2>
        ${intro === undefined ? nothing : html`<div class="prose-text">${proseView(intro)}</div>`}
        <h3>${say('lessons.aimsHead')}</h3>
        <ul class="boxes">
          ${objectives.map((each) => html`<li>${each}</li>`)}
        </ul>
        <h3>${say('lessons.stepsHead')}</h3>
        <ol class="steps">
          ${steps.map(
            ({ text, choices }) =>
              html`<li>
                <div class="prose-text">${proseView(text)}</div>
                ${
                  choices.length > 0
                    ? html`<ul class="boxes">
                        ${choices.map((choice) => html`<li>${proseLine(choice)}</li>`)}
                      </ul>`
                    : nothing
                }
              </li>`,
          )}
        </ol>
        ${figures.map(
          ({ bench, stand, caption }, at) =>
            html`<figure>
              ${sectionFigure(bench, stand)}
              <figcaption>${say('lessons.figure', { figure: at + 1, caption })}</figcaption>
            </figure>`,
        )}
        ${
          blanks.length > 0
            ? html`<h3>${say('lessons.blanksHead')}</h3>
                <ol class="blanks">
                  ${blanks.map((blank) => html`<li>${proseLine(toWriteOn(blank))}</li>`)}
                </ol>`
            : nothing
        }
        <div class="small">
          <h3>${say('lessons.cautionsHead')}</h3>
          ${ids.map((id) => html`<p>${say(id)}</p>`)}
        </div>
        <div class="small">
          <h3>${say('lessons.sourcesHead')}</h3>
          ${sources.map((source) => html`<p>${source}</p>`)}
        </div>
      </article>
      ${
        answers.length > 0
          ? html`<article>
              <h2>${say('lessons.answersHead', { title })}</h2>
              <ol class="blanks">
                ${answers.map((answer) => html`<li>${proseLine(answer)}</li>`)}
              </ol>
            </article>`
          : nothing
      }
    `
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector('h2')?.focus()
  }
}

/** A gap that a pen fills, whatever length its author gave it. */
function toWriteOn(blank: string): string {
  const parts = blank.split(/_{2,}/)
  return parts.join('_'.repeat(parts.length > 2 ? 12 : 20))
}

customElements.define('tack-lesson-handout', LessonHandout)
